package yardloom.kernel.scope;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/** Ranges that make sense on a yard, and the messages when a value lies outside. */
public final class Limits {
  public static final Length BUILT_HEIGHT = Length.metres(100);
  public static final Length TREE_HEIGHT = Length.metres(120);
  public static final Length CROWN = Length.metres(60);
  public static final Length TRUNK = Length.metres(10);
  public static final Length OVERHANG = Length.metres(3);
  public static final Length FENCE_HEIGHT = Length.metres(15);
  public static final Length THICKNESS = Length.metres(5);
  public static final Length PATH_WIDTH = Length.metres(20);
  public static final Length CLEARANCE = Length.metres(50);
  public static final Length SETBACK = Length.metres(200);
  public static final Length STRIP = Length.metres(50);

  /** Coordinates further out than this are almost always state-plane or grid coordinates. */
  public static final Length REACH = Length.metres(10_000);

  private Limits() {}

  public static Length positive(String what, Length value, Length most) {
    if (value.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, what + " must be more than zero, got " + show(value));
    }
    return atMost(what, value, most);
  }

  public static Length zeroOrMore(String what, Length value, Length most) {
    if (value.metres() < 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, what + " cannot be negative, got " + show(value));
    }
    return atMost(what, value, most);
  }

  public static Length atMost(String what, Length value, Length most) {
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

  public static double share(String what, Number value) {
    double share = value.doubleValue();
    if (!(share >= 0 && share <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          what + " is a share between 0 (solid) and 1 (open), got " + value);
    }
    return share;
  }

  /** {@code 2.44 m (8.00 ft)}. */
  public static String show(Length value) {
    return String.format(Locale.ROOT, "%.2f m (%.2f ft)", value.metres(), value.feet());
  }

  public static <T> T or(T value, T fallback) {
    return value == null ? fallback : value;
  }
}
