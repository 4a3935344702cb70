package yardloom.water.drip.formula;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Rows of dripline moved across a bed until none lies under a row of plants: each to the nearest
 * free place, no farther than a quarter of the row spacing, so that two rows keep half of it
 * between them. A row without a free place so near stays where it was.
 *
 * <p>All lengths are metres across the bed, from one of its long sides.
 *
 * <p>References: common practice, no source.
 */
public final class BesidePlants {
  private static final double MOST_SHARE = 0.25;
  private static final double SLACK_M = 1e-6;

  private BesidePlants() {}

  /**
   * Where the rows lie then, in the same order.
   *
   * @param rowsM where they lie by the bed alone
   * @param spacingM of the rows
   * @param widthM of the bed
   * @param plantsM where plants stand, in any order
   * @param handM how far a row keeps from plants and from both sides of the bed at least
   * @param feedM the side from which water comes: of two free places equally near, the one towards
   *     it is taken
   */
  public static double[] of(
      double[] rowsM,
      double spacingM,
      double widthM,
      double[] plantsM,
      double handM,
      double feedM) {
    return Arrays.stream(rowsM)
        .map(row -> beside(row, spacingM * MOST_SHARE, widthM, plantsM, handM, feedM))
        .toArray();
  }

  private static double beside(
      double rowM, double mostM, double widthM, double[] plantsM, double handM, double feedM) {
    if (isFree(rowM, plantsM, handM)) {
      return rowM;
    }
    double best = rowM;
    double bestWay = Double.POSITIVE_INFINITY;
    DoubleStream edges =
        Arrays.stream(plantsM).flatMap(p -> DoubleStream.of(p - handM, p + handM)).sorted();
    for (double at : edges.toArray()) {
      double way = Math.abs(at - rowM);
      boolean isInside = at >= handM - SLACK_M && at <= widthM - handM + SLACK_M;
      boolean isNearer =
          way < bestWay - SLACK_M
              || way < bestWay + SLACK_M && Math.abs(at - feedM) < Math.abs(best - feedM);
      if (isInside && way <= mostM + SLACK_M && isNearer && isFree(at, plantsM, handM)) {
        best = at;
        bestWay = way;
      }
    }
    return best;
  }

  /** Whether a row there keeps a hand from all plants. */
  public static boolean isFree(double rowM, double[] plantsM, double handM) {
    return Arrays.stream(plantsM).allMatch(p -> Math.abs(p - rowM) >= handM - SLACK_M);
  }
}
