package yardloom.sun.body;

import java.util.List;

/**
 * The ground as a plane through the plan's origin: height = riseX·x + riseY·y, in metres per metre.
 *
 * <p>Measured levels give the plane of least squares: the normal equations of height on x and y
 * about the middle of the points, solved in closed form.
 *
 * <p>References: any text on least squares; own sign conventions.
 */
public record Ground(double riseX, double riseY) {
  private static final double FLAT_SPREAD = 1e-9;

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

  /**
   * The plane nearest to levels, by least squares. Fewer than three points, or all on one line,
   * give level ground.
   *
   * @param levels x, y and height of each point in metres
   */
  public static Ground nearest(List<double[]> levels) {
    double[] mean = new double[3];
    for (double[] level : levels) {
      for (int i = 0; i < 3; i++) {
        mean[i] += level[i] / levels.size();
      }
    }
    double xx = 0;
    double xy = 0;
    double yy = 0;
    double xz = 0;
    double yz = 0;
    for (double[] level : levels) {
      double x = level[0] - mean[0];
      double y = level[1] - mean[1];
      double z = level[2] - mean[2];
      xx += x * x;
      xy += x * y;
      yy += y * y;
      xz += x * z;
      yz += y * z;
    }
    double spread = xx * yy - xy * xy;
    if (!(spread > FLAT_SPREAD * xx * yy)) {
      return LEVEL;
    }
    return new Ground((xz * yy - yz * xy) / spread, (yz * xx - xz * xy) / spread);
  }

  /** The direction of the fall, clockwise from true north, 0 to below 2π. */
  public double fallsTowardsRad(double northRad) {
    double bearing = StrictMath.atan2(-riseX, -riseY) - northRad;
    return bearing - 2 * StrictMath.PI * Math.floor(bearing / (2 * StrictMath.PI));
  }

  /** Metres of fall per metre along the fall, not negative. */
  public double steepest() {
    return StrictMath.hypot(riseX, riseY);
  }

  public double heightM(double x, double y) {
    return riseX * x + riseY * y;
  }
}
