package yardloom.kernel.words;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/** Ranges that make sense on a yard, and the messages when a value lies outside. */
final class Limits {
  static final Length BUILT_HEIGHT = Length.metres(100);
  static final Length TREE_HEIGHT = Length.metres(120);
  static final Length CROWN = Length.metres(60);
  static final Length TRUNK = Length.metres(10);
  static final Length OVERHANG = Length.metres(3);
  static final Length FENCE_HEIGHT = Length.metres(15);
  static final Length THICKNESS = Length.metres(5);
  static final Length PATH_WIDTH = Length.metres(20);
  static final Length CLEARANCE = Length.metres(50);
  static final Length SETBACK = Length.metres(200);
  static final Length STRIP = Length.metres(50);

  /** Coordinates further out than this are almost always state-plane or grid coordinates. */
  static final Length REACH = Length.metres(10_000);

  private Limits() {}

  static Length positive(String what, Length value, Length most) {
    if (value.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, what + " must be more than zero, got " + show(value));
    }
    return atMost(what, value, most);
  }

  static Length zeroOrMore(String what, Length value, Length most) {
    if (value.metres() < 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, what + " cannot be negative, got " + show(value));
    }
    return atMost(what, value, most);
  }

  static Length atMost(String what, Length value, Length most) {
    if (value.compareTo(most) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          what
              + " must be at most "
              + show(most)
              + ", got "
              + show(value)
              + "; is the unit the one you meant?");
    }
    return value;
  }

  static double share(String what, Number value) {
    double share = value.doubleValue();
    if (!(share >= 0 && share <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          what + " is a share between 0 (solid) and 1 (open), got " + value);
    }
    return share;
  }

  /** {@code 2.44 m (8.00 ft)}. */
  static String show(Length value) {
    return String.format(Locale.ROOT, "%.2f m (%.2f ft)", value.metres(), value.feet());
  }

  static <T> T or(T value, T fallback) {
    return value == null ? fallback : value;
  }
}
