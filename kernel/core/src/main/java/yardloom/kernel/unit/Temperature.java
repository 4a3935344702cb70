package yardloom.kernel.unit;

/** A temperature; below absolute zero is refused. */
public final class Temperature extends Quantity<Temperature> {
  private Temperature(double kelvins) {
    super(kelvins);
    if (kelvins < 0) {
      throw new IllegalArgumentException(
          "a temperature cannot be below absolute zero, got " + kelvins + " K");
    }
  }

  /** Kelvins. */
  public static Temperature kelvins(double value) {
    return new Temperature(Unit.KELVIN.toSi(value));
  }

  /** The value in kelvins. */
  public double kelvins() {
    return in(Unit.KELVIN);
  }

  /** Degrees Celsius. */
  public static Temperature celsius(double value) {
    return new Temperature(Unit.CELSIUS.toSi(value));
  }

  /** The value in degrees Celsius. */
  public double celsius() {
    return in(Unit.CELSIUS);
  }

  /** Degrees Fahrenheit. */
  public static Temperature fahrenheit(double value) {
    return new Temperature(Unit.FAHRENHEIT.toSi(value));
  }

  /** The value in degrees Fahrenheit. */
  public double fahrenheit() {
    return in(Unit.FAHRENHEIT);
  }

  @Override
  public Dimension dimension() {
    return Dimension.TEMPERATURE;
  }

  @Override
  Temperature of(double newSi) {
    return new Temperature(newSi);
  }
}
