package yardloom.kernel.unit;

/** A water pressure above that of the air. */
public final class Pressure extends Quantity<Pressure> {
  /** Nothing at all. */
  public static final Pressure ZERO = new Pressure(0);

  private Pressure(double pascals) {
    super(pascals);
  }

  /** Pascals. */
  public static Pressure pascals(double value) {
    return new Pressure(Unit.PASCAL.toSi(value));
  }

  /** The value in pascals. */
  public double pascals() {
    return in(Unit.PASCAL);
  }

  /** Kilopascals. */
  public static Pressure kilopascals(double value) {
    return new Pressure(Unit.KILOPASCAL.toSi(value));
  }

  /** The value in kilopascals. */
  public double kilopascals() {
    return in(Unit.KILOPASCAL);
  }

  /** Pounds-force per square inch. */
  public static Pressure psi(double value) {
    return new Pressure(Unit.POUND_PER_SQUARE_INCH.toSi(value));
  }

  /** The value in pounds-force per square inch. */
  public double psi() {
    return in(Unit.POUND_PER_SQUARE_INCH);
  }

  @Override
  public Dimension dimension() {
    return Dimension.PRESSURE;
  }

  @Override
  Pressure of(double newSi) {
    return new Pressure(newSi);
  }
}
