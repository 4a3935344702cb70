package yardloom.kernel.unit;

/** Which units sheets and tables show; facts stay in SI whichever is chosen. */
public enum UnitSystem {
  US,
  METRIC;

  /** The unit in which this system shows the small measures of a garden in {@code dimension}. */
  public Unit unit(Dimension dimension) {
    boolean us = this == US;
    return switch (dimension) {
      case LENGTH -> us ? Unit.FOOT : Unit.METRE;
      case AREA -> us ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
      case VOLUME -> us ? Unit.CUBIC_YARD : Unit.CUBIC_METRE;
      case MASS -> us ? Unit.POUND : Unit.KILOGRAM;
      case ANGLE -> Unit.DEGREE;
      case FLOW -> us ? Unit.GALLON_PER_MINUTE : Unit.LITRE_PER_HOUR;
      case PRESSURE -> us ? Unit.POUND_PER_SQUARE_INCH : Unit.KILOPASCAL;
      case TEMPERATURE -> us ? Unit.FAHRENHEIT : Unit.CELSIUS;
      case DURATION -> Unit.HOUR;
      case MONEY -> Unit.MONEY_UNIT;
    };
  }

  /** The unit for layer depths and other measures below a foot. */
  public Unit depthUnit() {
    return this == US ? Unit.INCH : Unit.CENTIMETRE;
  }

  /** A measure said in both systems, this one first and the other in brackets. */
  public String both(String us, String metric) {
    return this == US ? us + " (" + metric + ")" : metric + " (" + us + ")";
  }
}
