package yardloom.climate.weather;

import java.time.LocalDate;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Daily extremes of temperature at a station, by date.
 *
 * @param source who measured them
 */
public record DailyWeather(SortedMap<LocalDate, Day> days, String source) {
  /** The extremes of a day in degrees Celsius. */
  public record Day(double maxC, double minC) {}

  public DailyWeather {
    days = Collections.unmodifiableSortedMap(new TreeMap<>(days));
  }
}
