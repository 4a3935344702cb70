package yardloom.kernel.unit;

/** A volume of water in a time. */
public final class Flow extends Quantity<Flow> {
  /** Nothing at all. */
  public static final Flow ZERO = new Flow(0);

  private Flow(double cubicMetresPerSecond) {
    super(cubicMetresPerSecond);
  }

  /** Cubic metres per second. */
  public static Flow cubicMetresPerSecond(double value) {
    return new Flow(Unit.CUBIC_METRE_PER_SECOND.toSi(value));
  }

  /** The value in cubic metres per second. */
  public double cubicMetresPerSecond() {
    return in(Unit.CUBIC_METRE_PER_SECOND);
  }

  /** Litres per hour. */
  public static Flow litresPerHour(double value) {
    return new Flow(Unit.LITRE_PER_HOUR.toSi(value));
  }

  /** The value in litres per hour. */
  public double litresPerHour() {
    return in(Unit.LITRE_PER_HOUR);
  }

  /** US gallons per minute. */
  public static Flow gallonsPerMinute(double value) {
    return new Flow(Unit.GALLON_PER_MINUTE.toSi(value));
  }

  /** The value in US gallons per minute. */
  public double gallonsPerMinute() {
    return in(Unit.GALLON_PER_MINUTE);
  }

  /** US gallons per hour. */
  public static Flow gallonsPerHour(double value) {
    return new Flow(Unit.GALLON_PER_HOUR.toSi(value));
  }

  /** The value in US gallons per hour. */
  public double gallonsPerHour() {
    return in(Unit.GALLON_PER_HOUR);
  }

  /** The volume that flows in {@code span}. */
  public Volume during(TimeSpan span) {
    return Volume.cubicMetres(cubicMetresPerSecond() * span.seconds());
  }

  @Override
  public Dimension dimension() {
    return Dimension.FLOW;
  }

  @Override
  Flow of(double newSi) {
    return new Flow(newSi);
  }
}
