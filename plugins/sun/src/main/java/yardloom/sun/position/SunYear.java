package yardloom.sun.position;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The sun's declination on each day of a year of 365 days, and the days in order of it.
 *
 * <p>Taken at local solar noon of a reference year in the middle of the leap cycle; other years
 * differ by at most 0.2°, and the drift within a day (at most 0.2° from noon to dusk) is left out.
 * 29 February counts as 28 February. Values are rounded to 1e-10 so that they are the same on every
 * machine.
 *
 * <p>References: [1] see {@link SolarPositions}; [2] S. A. Klein, Calculation of monthly average
 * insolation on tilted surfaces, Solar Energy 19, 1977, table of mean days (from memory).
 */
public final class SunYear {
  public static final int DAYS = 365;

  /** The year whose days stand for every year. */
  public static final int REFERENCE_YEAR = 2026;

  /** The day of each month whose declination is nearest to the month's mean [2]. */
  public static final List<MonthDay> MEAN_DAYS =
      IntStream.range(0, 12)
          .mapToObj(
              m ->
                  MonthDay.of(m + 1, new int[] {17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10}[m]))
          .toList();

  private static final int BINS = 4096;

  private final double[] tanByDay = new double[DAYS];
  private final int[] dayByRank;
  private final double[] tanByRank = new double[DAYS];
  private final int[] binStart = new int[BINS + 1];
  private final double least;
  private final double binsPerUnit;

  public SunYear(double longitudeDeg) {
    LocalDate first = LocalDate.of(REFERENCE_YEAR, 1, 1);
    for (int day = 0; day < DAYS; day++) {
      Instant noon =
          first
              .plusDays(day)
              .atTime(12, 0)
              .toInstant(ZoneOffset.UTC)
              .minusMillis(StrictMath.round(longitudeDeg * 240_000));
      double declination = StrictMath.toRadians(SolarPositions.declinationDeg(noon));
      tanByDay[day] = StrictMath.rint(StrictMath.tan(declination) * 1e10) / 1e10;
    }
    dayByRank =
        IntStream.range(0, DAYS)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer d) -> tanByDay[d]))
            .mapToInt(d -> d)
            .toArray();
    for (int r = 0; r < DAYS; r++) {
      tanByRank[r] = tanByDay[dayByRank[r]];
    }
    least = tanByRank[0];
    binsPerUnit = BINS / (tanByRank[DAYS - 1] - least);
    Arrays.setAll(binStart, b -> firstFrom(0, least + b / binsPerUnit));
  }

  /** The day of the year of a date, 0 to 364. */
  public static int day(MonthDay date) {
    boolean leapDay = date.getMonthValue() == 2 && date.getDayOfMonth() == 29;
    return (leapDay ? MonthDay.of(2, 28) : date).atYear(REFERENCE_YEAR).getDayOfYear() - 1;
  }

  /** The month of a day of the year, 0 to 11. */
  public static int month(int day) {
    return LocalDate.ofYearDay(REFERENCE_YEAR, day + 1).getMonthValue() - 1;
  }

  /** The tangent of the declination on a day of the year. */
  public double tan(int day) {
    return tanByDay[day];
  }

  /** The greatest |tan δ| of the year. */
  public double limit() {
    return Math.max(-least, tanByRank[DAYS - 1]);
  }

  public int dayAtRank(int rank) {
    return dayByRank[rank];
  }

  /** How many days have tan δ below {@code t}; also the rank of the first that has not. */
  public int rank(double t) {
    double bin = (t - least) * binsPerUnit;
    if (!(bin > 0)) {
      return 0;
    }
    return bin >= BINS ? firstFrom(binStart[BINS], t) : firstFrom(binStart[(int) bin], t);
  }

  private int firstFrom(int rank, double t) {
    int r = rank;
    while (r < DAYS && tanByRank[r] < t) {
      r++;
    }
    return r;
  }
}
