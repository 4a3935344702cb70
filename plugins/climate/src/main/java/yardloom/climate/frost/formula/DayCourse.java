package yardloom.climate.frost.formula;

/**
 * Temperature by the hour from the extremes of days: half cosine waves from the minimum at 5 h to
 * the maximum at 15 h and on to the next day's minimum.
 *
 * <p>References: common practice, no source: the coldest hour about sunrise, the warmest in the
 * middle of the afternoon. Fronts that pass by night are missed; sums over a winter are good to
 * about a tenth (from memory, unverified).
 */
public final class DayCourse {
  private static final int COLDEST = 5;
  private static final int WARMEST = 15;

  private DayCourse() {}

  /**
   * The 24 hours that begin with a day's minimum.
   *
   * @param nextMinimum the minimum of the following day, in the unit of the others
   */
  public static double[] hours(double minimum, double maximum, double nextMinimum) {
    double[] hours = new double[24];
    for (int h = 0; h < 24; h++) {
      int clock = COLDEST + h;
      boolean warming = clock < WARMEST;
      double from = warming ? minimum : maximum;
      double to = warming ? maximum : nextMinimum;
      double part =
          warming
              ? (clock - COLDEST) / (double) (WARMEST - COLDEST)
              : (clock - WARMEST) / (24.0 - WARMEST + COLDEST);
      hours[h] = (from + to) / 2 + (from - to) / 2 * StrictMath.cos(StrictMath.PI * part);
    }
    return hours;
  }
}
