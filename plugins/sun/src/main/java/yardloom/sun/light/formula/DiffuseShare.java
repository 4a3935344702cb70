package yardloom.sun.light.formula;

/**
 * The diffuse share of a month's mean global radiation, from its clearness K = global / radiation
 * above the air. K is held to the fit's range 0.3 to 0.8; the share is never above 1.
 *
 * <p>References: [1] D. G. Erbs, S. A. Klein, J. A. Duffie, Estimation of the diffuse radiation
 * fraction for hourly, daily and monthly-average global radiation, Solar Energy 28, 1982, pp.
 * 293-302: monthly fits below and above a sunset hour angle of 81.4° (from memory).
 */
public final class DiffuseShare {
  private static final double WINTER_DEG = 81.4;
  private static final double[] WINTER = {1.391, -3.560, 4.189, -2.137};
  private static final double[] SUMMER = {1.311, -3.022, 3.427, -1.821};

  private DiffuseShare() {}

  /**
   * The share.
   *
   * @param sunsetRad hour angle of sunset on the month's mean day
   */
  public static double of(double clearness, double sunsetRad) {
    double k = Math.max(0.3, Math.min(0.8, clearness));
    double[] fit = sunsetRad <= StrictMath.toRadians(WINTER_DEG) ? WINTER : SUMMER;
    return Math.min(1, fit[0] + k * (fit[1] + k * (fit[2] + k * fit[3])));
  }
}
