package yardloom.water.need.formula;

import yardloom.kernel.unit.Length;

/**
 * Effective rain of a month by the Bureau of Reclamation's steps: 95, 90, 82, 65, 45, 25 percent of
 * the first six inches, 5 percent of what is above.
 *
 * <p>References: [1] US Bureau of Reclamation method, as coded in the State of Colorado's StateCU
 * (xcrain).
 */
public final class UsbrRain {
  private static final double[] SHARES = {0.95, 0.90, 0.82, 0.65, 0.45, 0.25};
  private static final double REST = 0.05;

  private UsbrRain() {}

  public static Length effective(Length rain) {
    double left = Math.max(0, rain.inches());
    double sum = 0;
    for (double share : SHARES) {
      double inch = Math.min(1, left);
      sum += inch * share;
      left -= inch;
    }
    return Length.inches(sum + left * REST);
  }
}
