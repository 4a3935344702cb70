package yardloom.climate.weather;

import java.time.LocalDate;
import java.util.Collections;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Daily extremes of temperature at a station, by date, and what else it measured.
 *
 * @param source who measured them
 */
public record DailyWeather(SortedMap<LocalDate, Day> days, String source) {
  /**
   * One day.
   *
   * @param maxC highest temperature, degrees Celsius
   * @param minC lowest temperature
   * @param dewC mean dew point
   * @param windMs mean wind at 2 m, metres per second
   * @param solarMj global radiation, MJ per square metre
   */
  public record Day(
      double maxC,
      double minC,
      OptionalDouble dewC,
      OptionalDouble windMs,
      OptionalDouble solarMj) {
    /** A day of which only the temperatures are known. */
    public Day(double maxC, double minC) {
      this(maxC, minC, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
  }

  public DailyWeather {
    days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
  }
}
