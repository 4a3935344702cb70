package yardloom.kernel.unit;

/**
 * One finite number with a dimension, stored in SI.
 *
 * <p>Immutable. Sums and differences keep the dimension; {@code multiply} and {@code div} take
 * plain numbers; products of two quantities exist only where a subclass names them (a length times
 * a length is an area). Not-a-number and infinity are refused when a quantity is made, so no result
 * carries them. The operator names ({@code plus}, {@code multiply}, {@code negative} …) are those
 * that the plan language maps its signs to.
 *
 * @param <Q> the concrete quantity
 */
public abstract sealed class Quantity<Q extends Quantity<Q>> implements Comparable<Q>
    permits Length, Area, Volume, Mass, Angle, Flow, Pressure, Temperature, TimeSpan, Money {

  private final double si;

  Quantity(double si) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException(
          dimension().word() + " must be a finite number, got " + si);
    }
    // Negative zero would print as "-0".
    this.si = si == 0 ? 0 : si;
  }

  /** What this quantity measures. */
  public abstract Dimension dimension();

  /** A quantity of the same kind with another SI value. */
  abstract Q of(double newSi);

  /** So much of a unit, as the quantity of the unit's kind. */
  public static Quantity<?> of(double value, Unit unit) {
    double si = unit.toSi(value);
    return switch (unit.dimension()) {
      case LENGTH -> Length.metres(si);
      case AREA -> Area.squareMetres(si);
      case VOLUME -> Volume.cubicMetres(si);
      case MASS -> Mass.kilograms(si);
      case ANGLE -> Angle.radians(si);
      case FLOW -> Flow.cubicMetresPerSecond(si);
      case PRESSURE -> Pressure.pascals(si);
      case TEMPERATURE -> Temperature.kelvins(si);
      case DURATION -> TimeSpan.seconds(si);
      case MONEY -> Money.amount(si);
    };
  }

  /** The value in the SI unit of the dimension (metres, square metres, kilograms, kelvins …). */
  public final double si() {
    return si;
  }

  /**
   * The value in {@code unit}.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public final double in(Unit unit) {
    if (unit.dimension() != dimension()) {
      throw new IllegalArgumentException(
          unit.symbol() + " measures " + unit.dimension().word() + ", not " + dimension().word());
    }
    return unit.fromSi(si);
  }

  public final Q plus(Q other) {
    return of(si + other.si());
  }

  public final Q minus(Q other) {
    return of(si - other.si());
  }

  /** This quantity {@code factor} times. */
  public final Q times(double factor) {
    return of(si * factor);
  }

  /** The same as {@link #times(double)}; the plan language's {@code *} arrives here. */
  public final Q multiply(Number factor) {
    return of(si * factor.doubleValue());
  }

  /**
   * This quantity divided by a plain number; the plan language's {@code /} arrives here.
   *
   * @throws ArithmeticException if the divisor is zero
   */
  public final Q div(Number divisor) {
    if (divisor.doubleValue() == 0) {
      throw new ArithmeticException("a " + dimension().word() + " cannot be divided by zero");
    }
    return of(si / divisor.doubleValue());
  }

  /** How many times {@code other} fits in this quantity, as a plain number. */
  public final double ratioTo(Q other) {
    if (other.si() == 0) {
      throw new ArithmeticException("a " + dimension().word() + " cannot be divided by zero");
    }
    return si / other.si();
  }

  public final Q negative() {
    return of(-si);
  }

  @SuppressWarnings("unchecked")
  public final Q max(Q other) {
    return compareTo(other) >= 0 ? (Q) this : other;
  }

  @SuppressWarnings("unchecked")
  public final Q min(Q other) {
    return compareTo(other) <= 0 ? (Q) this : other;
  }

  @Override
  public final int compareTo(Q other) {
    return Double.compare(si, other.si());
  }

  @Override
  public final boolean equals(Object other) {
    return other != null && other.getClass() == getClass() && ((Quantity<?>) other).si == si;
  }

  @Override
  public final int hashCode() {
    return Double.hashCode(si) * 31 + dimension().ordinal();
  }

  /** The SI value with its unit; for messages in debuggers and logs, not for sheets. */
  @Override
  public final String toString() {
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == dimension() && unit.toSi(1) == 1) {
        return si + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
      }
    }
    throw new IllegalStateException("no SI unit for " + dimension());
  }
}
