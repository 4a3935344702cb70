package yardloom.water.tank;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.facts.ClimateNormals;
import yardloom.facts.DailyRain;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.table.TableFormat;
import yardloom.water.tank.formula.RainGenerator;

/**
 * Rain by the day through whole years: measured where the plan gives a series, else made from the
 * normals.
 *
 * @param years days of each year in mm, with their dates
 * @param how for notes
 */
record RainYears(List<Year> years, String how) {
  /** In normals without wet days (common practice, no source). */
  private static final double USUAL_WET_DAY_MM = 8;

  /** The number of the first year that is made; not a leap year. */
  private static final int FIRST_MADE = 2021;

  /**
   * One year, or what a series has of it.
   *
   * @param days in their order, one for each of the rain's
   */
  record Year(List<LocalDate> days, double[] rainMm) {
    /** The month of a day, 0 (January) to 11. */
    int month(int day) {
      return days.get(day).getMonthValue() - 1;
    }
  }

  /** Empty without a series and without a climate. */
  static Optional<RainYears> of(Facts facts) {
    return facts
        .find(YardFacts.DAILY_RAIN)
        .map(RainYears::measured)
        .or(() -> facts.find(YardFacts.CLIMATE).map(RainYears::made));
  }

  /** Runs of 365 days from the first day on; what is left over at the end is not a year. */
  private static RainYears measured(DailyRain rain) {
    List<Year> years = new ArrayList<>();
    List<DailyRain.Day> days = rain.days();
    for (int from = 0; from + 365 <= days.size(); from += 365) {
      double[] mm = new double[365];
      List<LocalDate> dates = new ArrayList<>();
      for (int d = 0; d < 365; d++) {
        dates.add(days.get(from + d).date());
        mm[d] = days.get(from + d).rain().millimetres();
      }
      years.add(new Year(dates, mm));
    }
    String how =
        String.format(
            Locale.ROOT,
            "Day by day through %s, %s to %s: %d days in a row without rain at most",
            rain.station(),
            TableFormat.date(days.get(0).date()),
            TableFormat.date(days.get(days.size() - 1).date()),
            rain.longestDrySpell());
    return new RainYears(years, how + "; " + rain.source().cite() + ".");
  }

  private static RainYears made(ClimateNormals climate) {
    double[] rain = new double[12];
    double[] wet = new double[12];
    boolean isCounted = !climate.air().wetDays().isEmpty();
    for (int m = 0; m < 12; m++) {
      rain[m] = climate.months().get(m).rain().millimetres();
      wet[m] = isCounted ? climate.air().wetDays().get(m) : rain[m] / USUAL_WET_DAY_MM;
    }
    List<Year> years = new ArrayList<>();
    for (double[] mm : RainGenerator.years(rain, wet)) {
      int number = FIRST_MADE + years.size();
      // Of 365 days each, so that months are as long in all of them.
      List<LocalDate> dates =
          IntStream.rangeClosed(1, 365)
              .mapToObj(d -> LocalDate.ofYearDay(FIRST_MADE, d).withYear(number))
              .toList();
      years.add(new Year(dates, mm));
    }
    return new RainYears(
        years,
        "Day by day through "
            + RainGenerator.YEARS
            + " years of rain made from the normals (two-state Markov chain, gamma amounts; the same"
            + " at every run), wet days "
            + (isCounted
                ? "by " + climate.air().wetDaySource().cite()
                : "taken as one for each 8 mm (0.31 in)")
            + ". A series measured day by day is better.");
  }
}
