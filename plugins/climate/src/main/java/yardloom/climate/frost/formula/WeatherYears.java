package yardloom.climate.frost.formula;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import yardloom.climate.weather.DailyWeather;
import yardloom.climate.weather.DailyWeather.Day;
import yardloom.kernel.unit.Temperature;

/**
 * What the complete years of a weather record tell about cold and warmth; means over those years.
 *
 * <p>A year counts if at least {@value #LEAST_DAYS} of its days are known; in the south years run
 * from July to June. Chill is counted over the winter months that the year holds whole: November to
 * February cut by the turn of the year are counted as January, February, November and December of
 * one calendar year, in the south May, June of the year's end with July and August of its start;
 * over many years that is the same sum.
 *
 * <p>References: see {@link FreezeRecord}, {@link Chill} and {@link DegreeDays}; how many known
 * days make a year is our own choice.
 */
public final class WeatherYears {
  static final int LEAST_DAYS = 355;
  private static final double BASE_F = 50;

  private final SortedMap<LocalDate, Day> days;
  private final SortedMap<LocalDate, Double> minimaC = new TreeMap<>();
  private final boolean south;
  private final List<Integer> years = new ArrayList<>();

  public WeatherYears(DailyWeather record, boolean south) {
    days = record.days();
    days.forEach((date, day) -> minimaC.put(date, day.minC()));
    this.south = south;
    if (!days.isEmpty()) {
      for (int y = days.firstKey().getYear() - 1; y <= days.lastKey().getYear(); y++) {
        if (of(y).size() >= LEAST_DAYS) {
          years.add(y);
        }
      }
    }
  }

  private SortedMap<LocalDate, Day> of(int year) {
    return days.subMap(Freezes.start(year, south), Freezes.start(year + 1, south));
  }

  /** The years that count, by the year in which they begin. */
  public List<Integer> years() {
    return List.copyOf(years);
  }

  /** Freeze dates of the years that count. */
  public FreezeRecord freezes(double limitC) {
    return new FreezeRecord(minimaC, years, south, limitC);
  }

  /** The mean of the years' lowest temperatures, which makes the hardiness zone. */
  public Temperature meanLowest() {
    return Temperature.celsius(
        mean(y -> of(y).values().stream().mapToDouble(Day::minC).min().orElseThrow()));
  }

  /** Degree days over 50 °F of a whole year, in °F·d: simple means. */
  public double degreeDays() {
    return mean(y -> sum(y, d -> DegreeDays.simple(f(d.maxC()), f(d.minC()), BASE_F)));
  }

  /** Degree days of a whole year by the 86/50 method, in °F·d. */
  public double modifiedDegreeDays() {
    return mean(y -> sum(y, d -> DegreeDays.modified(f(d.maxC()), f(d.minC()))));
  }

  /** Winter hours below 45 °F. */
  public double chillHours() {
    return mean(y -> winter(y, Chill::belowFortyFive));
  }

  /** Winter hours between 32 and 45 °F. */
  public double chillHoursAboveFreezing() {
    return mean(y -> winter(y, Chill::aboveFreezing));
  }

  /** Utah chill units of the winter. */
  public double utahUnits() {
    return mean(y -> winter(y, Chill::utah));
  }

  private double mean(ToDoubleFunction<Integer> ofYear) {
    return years.stream().mapToDouble(ofYear).average().orElseThrow();
  }

  private double sum(int year, ToDoubleFunction<Day> ofDay) {
    return of(year).values().stream().mapToDouble(ofDay).sum();
  }

  private double winter(int year, ToDoubleFunction<Double> ofHour) {
    double sum = 0;
    for (SortedMap.Entry<LocalDate, Day> entry : of(year).entrySet()) {
      LocalDate date = entry.getKey();
      int month = date.getMonthValue();
      boolean cold = south ? month >= 5 && month <= 8 : month >= 11 || month <= 2;
      if (cold) {
        Day next = days.getOrDefault(date.plusDays(1), entry.getValue());
        Day day = entry.getValue();
        for (double hour : DayCourse.hours(f(day.minC()), f(day.maxC()), f(next.minC()))) {
          sum += ofHour.applyAsDouble(hour);
        }
      }
    }
    return sum;
  }

  private static double f(double celsius) {
    return celsius * 9 / 5 + 32;
  }
}
