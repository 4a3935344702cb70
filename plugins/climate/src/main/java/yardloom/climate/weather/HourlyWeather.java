package yardloom.climate.weather;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a station measured in each hour, by the beginning of the hour in the site's standard time.
 *
 * @param source who measured it
 */
public record HourlyWeather(SortedMap<LocalDateTime, Hour> hours, String source) {
  /**
   * Means of an hour; wind at 2 m, radiation in MJ per square metre and hour.
   *
   * @param dewC dew point, degrees Celsius
   */
  public record Hour(double airC, double dewC, double windMs, double solarMj) {}

  public HourlyWeather {
    hours = Collections.unmodifiableSortedMap(new TreeMap<>(hours));
  }
}
