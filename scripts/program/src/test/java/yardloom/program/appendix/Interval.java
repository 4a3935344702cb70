package yardloom.program.appendix;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Every value that a printed, thus rounded, number may stand for. */
record Interval(double low, double high) {
  /** Rounding of the machine, which is none of the printed rounding. */
  private static final double MACHINE = 1e-9;

  Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException("no interval: " + low + " to " + high);
    }
  }

  static Interval exact(double value) {
    return new Interval(value, value);
  }

  Interval plus(Interval other) {
    return new Interval(low + other.low, high + other.high);
  }

  Interval minus(Interval other) {
    return new Interval(low - other.high, high - other.low);
  }

  Interval times(Interval other) {
    return ofCorners(other, (a, b) -> a * b);
  }

  Interval over(Interval other) {
    if (other.low <= 0 && other.high >= 0) {
      throw new ArithmeticException("division by " + other);
    }
    return ofCorners(other, (a, b) -> a / b);
  }

  Interval power(Interval other) {
    return ofCorners(other, Math::pow);
  }

  Interval max(Interval other) {
    return new Interval(Math.max(low, other.low), Math.max(high, other.high));
  }

  Interval min(Interval other) {
    return new Interval(Math.min(low, other.low), Math.min(high, other.high));
  }

  /** By a function that never falls. */
  Interval rising(DoubleUnaryOperator by) {
    return new Interval(by.applyAsDouble(low), by.applyAsDouble(high));
  }

  /** Whole steps, as a price list counts them: 4.0000000001 is 4. */
  Interval upTo(Interval step) {
    return new Interval(
        Math.ceil(low / step.high - MACHINE) * step.low,
        Math.ceil(high / step.low - MACHINE) * step.high);
  }

  Interval downTo(Interval step) {
    return new Interval(
        Math.floor(low / step.high + MACHINE) * step.low,
        Math.floor(high / step.low + MACHINE) * step.high);
  }

  boolean meets(Interval other) {
    double slack = MACHINE * (1 + Math.abs(high));
    return low <= other.high + slack && other.low <= high + slack;
  }

  /** Its half width as a share of its middle. */
  double looseness() {
    double middle = Math.abs(low + high) / 2;
    return middle == 0 ? 0 : (high - low) / 2 / middle;
  }

  private Interval ofCorners(Interval other, DoubleBinaryOperator by) {
    double a = by.applyAsDouble(low, other.low);
    double b = by.applyAsDouble(low, other.high);
    double c = by.applyAsDouble(high, other.low);
    double d = by.applyAsDouble(high, other.high);
    return new Interval(
        Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
  }
}
