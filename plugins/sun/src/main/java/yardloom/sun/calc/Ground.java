package yardloom.sun.calc;

/**
 * The ground as a plane through the plan's origin: height = riseX·x + riseY·y, in metres per metre.
 */
public record Ground(double riseX, double riseY) {
  /** Level ground. */
  public static final Ground LEVEL = new Ground(0, 0);

  public Ground {
    if (!Double.isFinite(riseX) || !Double.isFinite(riseY)) {
      throw new IllegalArgumentException("a slope must be finite");
    }
  }

  /**
   * Ground that falls towards a bearing.
   *
   * @param slope metres of fall per metre, not negative
   * @param bearingRad the direction of the fall, clockwise from true north
   * @param northRad bearing of true north on the plan
   */
  public static Ground falling(double slope, double bearingRad, double northRad) {
    double onPlan = bearingRad + northRad;
    return new Ground(-slope * StrictMath.sin(onPlan), -slope * StrictMath.cos(onPlan));
  }

  /** The slope along the fall, not negative. */
  double steepest() {
    return StrictMath.hypot(riseX, riseY);
  }

  double heightM(double x, double y) {
    return riseX * x + riseY * y;
  }
}
