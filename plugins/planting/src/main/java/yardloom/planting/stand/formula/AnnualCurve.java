package yardloom.planting.stand.formula;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import yardloom.planting.catalogue.Crop.Coefficients;

/**
 * Crop coefficients by month of a crop that is planted on a day and is over after some days: the
 * four-stage curve of FAO-56, day by day, averaged over each whole month. Days before planting and
 * after the crop count as 0, so that a month in which it stands for a third has a third.
 *
 * <p>A crop that runs past the year's end goes on in January. More than a year is refused.
 *
 * <p>References: as {@link CropCurve}.
 */
public final class AnnualCurve {
  /** Nothing grows all year. */
  public static final List<Double> NOTHING = Collections.nCopies(12, 0.0);

  /** Any year without a leap day. */
  private static final int YEAR = 2021;

  private AnnualCurve() {}

  /** January to December. */
  public static List<Double> monthly(
      Coefficients kc, StageShares shares, MonthDay planted, int days) {
    return monthly(kc, shares, planted, days, days);
  }

  /**
   * The same of a crop that is cleared before it is over.
   *
   * @param stands the days from planting on which it stands, {@code days} at most
   */
  public static List<Double> monthly(
      Coefficients kc, StageShares shares, MonthDay planted, int days, int stands) {
    if (days < 1 || days > 365) {
      throw new IllegalArgumentException("a crop of " + days + " days");
    }
    double[] sums = new double[12];
    LocalDate first = planted.atYear(YEAR);
    for (int d = 0; d < Math.min(stands, days); d++) {
      // The middle of the day.
      sums[first.plusDays(d).getMonthValue() - 1] += CropCurve.at(kc, shares, (d + 0.5) / days);
    }
    List<Double> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(sums[m] / LocalDate.of(YEAR, m + 1, 1).lengthOfMonth());
    }
    return List.copyOf(months);
  }

  /** The greater of each month: a second sowing takes the ground of the first. */
  public static List<Double> more(List<Double> a, List<Double> b) {
    List<Double> more = new ArrayList<>();
    for (int m = 0; m < a.size(); m++) {
      more.add(Math.max(a.get(m), b.get(m)));
    }
    return List.copyOf(more);
  }
}
