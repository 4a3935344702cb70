package yardloom.kernel.unit;

/** A length of time, independent of any calendar. */
public final class TimeSpan extends Quantity<TimeSpan> {
  /** Nothing at all. */
  public static final TimeSpan ZERO = new TimeSpan(0);

  private TimeSpan(double seconds) {
    super(seconds);
  }

  /** Seconds. */
  public static TimeSpan seconds(double value) {
    return new TimeSpan(Unit.SECOND.toSi(value));
  }

  /** The value in seconds. */
  public double seconds() {
    return in(Unit.SECOND);
  }

  /** Minutes. */
  public static TimeSpan minutes(double value) {
    return new TimeSpan(Unit.MINUTE.toSi(value));
  }

  /** The value in minutes. */
  public double minutes() {
    return in(Unit.MINUTE);
  }

  /** Hours. */
  public static TimeSpan hours(double value) {
    return new TimeSpan(Unit.HOUR.toSi(value));
  }

  /** The value in hours. */
  public double hours() {
    return in(Unit.HOUR);
  }

  /** Days of 24 hours. */
  public static TimeSpan days(double value) {
    return new TimeSpan(Unit.DAY.toSi(value));
  }

  /** The value in days of 24 hours. */
  public double days() {
    return in(Unit.DAY);
  }

  @Override
  public Dimension dimension() {
    return Dimension.DURATION;
  }

  @Override
  TimeSpan of(double newSi) {
    return new TimeSpan(newSi);
  }
}
