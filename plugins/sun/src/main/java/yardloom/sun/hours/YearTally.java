package yardloom.sun.hours;

import java.util.Arrays;
import yardloom.sun.position.SunYear;
import yardloom.sun.shade.ColumnProfile;
import yardloom.sun.shade.HourColumns;
import yardloom.sun.shade.LightSegments;
import yardloom.sun.shade.ShadeScene;

/**
 * Direct hours of one cell summed over groups of days, all 365 days at once.
 *
 * <p>A piece of shade from t₁ to t₂ shades the days whose tan δ lies between; in order of tan δ
 * these are neighbours, so two steps of a running count serve them all. The cost does not depend on
 * the number of days.
 *
 * <p>References: own construction; the running count is the usual difference array.
 */
final class YearTally {
  private final SunYear year;
  private final HourColumns columns;
  private final LightSegments segments;
  private final int[] groupAtRank;
  private final int[] monthOfGroup;
  private final int groups;
  private final int[] openRank;
  private final long[] beforeSum;
  private final long[] afterSum;
  private final long[] open;
  private final long[] openMorning;
  private int[][] morning = new int[4][SunYear.DAYS + 1];
  private int[][] evening = new int[4][SunYear.DAYS + 1];
  private int usedKinds;

  /**
   * A tally.
   *
   * @param groupOfDay for each day of the year a group number from 0; the days of a group lie in
   *     one month
   */
  YearTally(ShadeScene scene, SunYear year, HourColumns columns, int[] groupOfDay, int groups) {
    this.year = year;
    this.columns = columns;
    this.groups = groups;
    segments = new LightSegments(scene);
    groupAtRank = new int[SunYear.DAYS];
    monthOfGroup = new int[groups];
    for (int r = 0; r < SunYear.DAYS; r++) {
      int day = year.dayAtRank(r);
      groupAtRank[r] = groupOfDay[day];
      monthOfGroup[groupOfDay[day]] = SunYear.month(day);
    }
    beforeSum = new long[groups];
    afterSum = new long[groups];
    openRank = new int[columns.count];
    open = new long[groups];
    openMorning = new long[groups];
    for (int j = columns.first; j <= columns.last; j++) {
      openRank[j] = year.rank(columns.low[j]);
      for (int r = openRank[j]; r < year.rank(columns.high[j]); r++) {
        open[groupAtRank[r]]++;
        openMorning[groupAtRank[r]] += isMorning(j) ? 1 : 0;
      }
    }
  }

  private boolean isMorning(int j) {
    return 2 * j < columns.count;
  }

  /**
   * Adds up a cell.
   *
   * @param hours receives the hours of each group's days together
   * @param morningHours receives the part before solar noon
   */
  void add(ColumnProfile profile, double[] hours, double[] morningHours) {
    for (int k = 0; k < usedKinds; k++) {
      Arrays.fill(morning[k], 0);
      Arrays.fill(evening[k], 0);
    }
    segments.reset();
    for (int j = columns.first; j <= columns.last; j++) {
      if (profile.count[j] > 0) {
        segments.cut(profile, j);
        count(isMorning(j) ? morning : evening, j);
      }
    }
    usedKinds = segments.kinds();
    sum(hours, morningHours);
  }

  private void count(int[][] counts, int j) {
    int[][] into = counts;
    if (segments.kinds() > into.length) {
      grow(segments.kinds());
      into = isMorning(j) ? morning : evening;
    }
    for (int i = 0; i < segments.count; i++) {
      double low = segments.low[i];
      int from = low == columns.low[j] ? openRank[j] : year.rank(low);
      int to = year.rank(segments.high[i]);
      into[segments.kind[i]][from]++;
      into[segments.kind[i]][to]--;
    }
  }

  private void grow(int kinds) {
    int had = morning.length;
    morning = Arrays.copyOf(morning, 2 * kinds);
    evening = Arrays.copyOf(evening, 2 * kinds);
    for (int k = had; k < morning.length; k++) {
      morning[k] = new int[SunYear.DAYS + 1];
      evening[k] = new int[SunYear.DAYS + 1];
    }
  }

  private void sum(double[] hours, double[] morningHours) {
    for (int g = 0; g < groups; g++) {
      hours[g] = open[g];
      morningHours[g] = openMorning[g];
    }
    for (int k = 0; k < usedKinds; k++) {
      sumDays(k);
      for (int g = 0; g < groups; g++) {
        double loss = segments.loss(k, monthOfGroup[g]);
        hours[g] -= (beforeSum[g] + afterSum[g]) * loss;
        morningHours[g] -= beforeSum[g] * loss;
      }
    }
    for (int g = 0; g < groups; g++) {
      // Rounding of the shares can leave a dust below zero.
      hours[g] = Math.max(0, hours[g] * columns.stepHours);
      morningHours[g] = Math.max(0, morningHours[g] * columns.stepHours);
    }
  }

  /** Adds up the shaded columns of a kind over the days of each group. */
  private void sumDays(int k) {
    Arrays.fill(beforeSum, 0);
    Arrays.fill(afterSum, 0);
    int[] am = morning[k];
    int[] pm = evening[k];
    int before = 0;
    int after = 0;
    for (int r = 0; r < SunYear.DAYS; r++) {
      before += am[r];
      after += pm[r];
      int g = groupAtRank[r];
      beforeSum[g] += before;
      afterSum[g] += after;
    }
  }
}
