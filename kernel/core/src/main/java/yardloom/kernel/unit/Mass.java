package yardloom.kernel.unit;

/** The mass of a material. */
public final class Mass extends Quantity<Mass> {
  /** Nothing at all. */
  public static final Mass ZERO = new Mass(0);

  private Mass(double kilograms) {
    super(kilograms);
  }

  /** Kilograms. */
  public static Mass kilograms(double value) {
    return new Mass(Unit.KILOGRAM.toSi(value));
  }

  /** The value in kilograms. */
  public double kilograms() {
    return in(Unit.KILOGRAM);
  }

  /** Avoirdupois pounds. */
  public static Mass pounds(double value) {
    return new Mass(Unit.POUND.toSi(value));
  }

  /** The value in avoirdupois pounds. */
  public double pounds() {
    return in(Unit.POUND);
  }

  @Override
  public Dimension dimension() {
    return Dimension.MASS;
  }

  @Override
  Mass of(double newSi) {
    return new Mass(newSi);
  }
}
