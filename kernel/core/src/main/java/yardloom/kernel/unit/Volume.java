package yardloom.kernel.unit;

/** The bulk of a material or an amount of water. */
public final class Volume extends Quantity<Volume> {
  /** Nothing at all. */
  public static final Volume ZERO = new Volume(0);

  private Volume(double cubicMetres) {
    super(cubicMetres);
  }

  /** Cubic metres. */
  public static Volume cubicMetres(double value) {
    return new Volume(Unit.CUBIC_METRE.toSi(value));
  }

  /** The value in cubic metres. */
  public double cubicMetres() {
    return in(Unit.CUBIC_METRE);
  }

  /** Litres. */
  public static Volume litres(double value) {
    return new Volume(Unit.LITRE.toSi(value));
  }

  /** The value in litres. */
  public double litres() {
    return in(Unit.LITRE);
  }

  /** Cubic feet. */
  public static Volume cubicFeet(double value) {
    return new Volume(Unit.CUBIC_FOOT.toSi(value));
  }

  /** The value in cubic feet. */
  public double cubicFeet() {
    return in(Unit.CUBIC_FOOT);
  }

  /** Cubic yards. */
  public static Volume cubicYards(double value) {
    return new Volume(Unit.CUBIC_YARD.toSi(value));
  }

  /** The value in cubic yards. */
  public double cubicYards() {
    return in(Unit.CUBIC_YARD);
  }

  /** US gallons. */
  public static Volume gallons(double value) {
    return new Volume(Unit.GALLON.toSi(value));
  }

  /** The value in US gallons. */
  public double gallons() {
    return in(Unit.GALLON);
  }

  /**
   * The mean flow that delivers this volume in {@code span}.
   *
   * @throws ArithmeticException if the span is zero
   */
  public Flow per(TimeSpan span) {
    if (span.si() == 0) {
      throw new ArithmeticException("a volume cannot be delivered in no time");
    }
    return Flow.cubicMetresPerSecond(cubicMetres() / span.seconds());
  }

  @Override
  public Dimension dimension() {
    return Dimension.VOLUME;
  }

  @Override
  Volume of(double newSi) {
    return new Volume(newSi);
  }
}
