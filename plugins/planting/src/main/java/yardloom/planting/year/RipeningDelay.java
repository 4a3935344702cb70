package yardloom.planting.year;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.unit.Months;
import yardloom.planting.care.formula.WarmDay;

/**
 * By how many days fruit that rests in winter ripens later than its usual days after bloom, where
 * the summer is cooler than in the coolest region that those days were held against: it waits until
 * it has had the warmth it would have had there by then. Warmth is the sum of the daily means above
 * 10 °C (50 °F); means run straight between the middles of the months. 0 where the temperatures are
 * not known or the summer is no cooler; at most {@link #LONGEST}, as what is not ripe by then will
 * not be.
 *
 * <p>References: sums of degrees above a base as a measure of development, and 50 °F as the base of
 * deciduous fruit, are common practice; the reference is the Seattle normals, since Washington
 * State's typical ripening dates agree there with the usual days. Held against lists of ripening
 * dates of San Francisco Bay.
 */
public final class RipeningDelay {
  /** What is not ripe two months late stays unripe: common practice. */
  public static final int LONGEST = 60;

  private static final double BASE_C = 10;

  /** Mean of each month in Seattle, °C: from its hourly normals of 1981 to 2010 (NOAA). */
  private static final List<Double> REFERENCE_C =
      List.of(5.39, 6.11, 7.74, 9.81, 12.89, 15.56, 18.27, 18.40, 15.67, 11.24, 7.32, 4.74);

  /** A year without a leap day. */
  private static final int YEAR = 2021;

  /** Of a month, as for the first warm day. */
  private static final int MIDDLE = 15;

  /** Sums of the same days in another order differ by less. */
  private static final double ROUNDING = 1e-6;

  private RipeningDelay() {}

  /**
   * @param begins the usual last frost, or the first warm day where there is none
   * @param days from then, or from bloom where that is later, to ripeness; none are added to days
   *     before it
   */
  public static int days(MonthDay begins, int days, Optional<ClimateNormals> climate) {
    if (climate.isEmpty() || days <= 0) {
      return 0;
    }
    LocalDate there = WarmDay.of(REFERENCE_C).orElseThrow().atYear(YEAR);
    double needed = warmth(REFERENCE_C, there.plusDays(BloomDelay.BLOOM_DAYS), days);
    List<Double> meansC = climate.get().meansC();
    LocalDate day = begins.atYear(YEAR).plusDays(BloomDelay.days(begins, climate));
    double had = warmth(meansC, day, days);
    int late = 0;
    while (had < needed - ROUNDING && late < LONGEST) {
      had += Math.max(0, mean(meansC, day.plusDays(days + late)) - BASE_C);
      late++;
    }
    return late;
  }

  /** The sum of the degrees above the base, from a day on. */
  private static double warmth(List<Double> meansC, LocalDate from, int days) {
    double sum = 0;
    for (int day = 0; day < days; day++) {
      sum += Math.max(0, mean(meansC, from.plusDays(day)) - BASE_C);
    }
    return sum;
  }

  /** The mean of a day: on the straight line from the middle of a month to that of the next. */
  private static double mean(List<Double> meansC, LocalDate day) {
    LocalDate month = day.getDayOfMonth() >= MIDDLE ? day : day.minusMonths(1);
    int m = month.getMonthValue() - 1;
    LocalDate middle = month.withDayOfMonth(MIDDLE);
    double share = (day.toEpochDay() - middle.toEpochDay()) / (double) Months.days(m);
    return meansC.get(m) + share * (meansC.get((m + 1) % 12) - meansC.get(m));
  }
}
