package yardloom.climate.weather;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.problem.ProblemCode;

/**
 * Reads hours of weather from comma-separated text with the columns {@code time} (the beginning of
 * the hour, such as 2015-07-01T10:00), {@code temp}, {@code dew}, {@code wind_ms} or {@code
 * wind_mph} and {@code solar_mj} or {@code solar_kwh} in any order. Hours without all of them are
 * left out. Throws PlanException (WRONG_TYPE, OUT_OF_RANGE, DUPLICATE) without a place, naming the
 * line.
 */
public final class HourlyWeatherText {
  private HourlyWeatherText() {}

  public static HourlyWeather read(
      String text, boolean fahrenheit, double windHeightM, String source) {
    List<WeatherCells> lines =
        WeatherCells.of(
            text,
            "the hourly record",
            List.of("time", "temp", "dew"),
            "an hourly record begins with a line that names the columns time, temp, dew, wind_ms and"
                + " solar_mj, separated by commas");
    SortedMap<LocalDateTime, HourlyWeather.Hour> hours = new TreeMap<>();
    for (WeatherCells cells : lines) {
      OptionalDouble wind = cells.wind(windHeightM);
      OptionalDouble solar = cells.solar();
      if (cells.cell("temp").isEmpty()
          || cells.cell("dew").isEmpty()
          || wind.isEmpty()
          || solar.isEmpty()) {
        continue;
      }
      HourlyWeather.Hour hour =
          new HourlyWeather.Hour(
              cells.celsius("temp", fahrenheit),
              cells.celsius("dew", fahrenheit),
              wind.getAsDouble(),
              solar.getAsDouble());
      if (hours.put(time(cells), hour) != null) {
        throw cells.problem(ProblemCode.DUPLICATE, "this hour is given twice");
      }
    }
    return new HourlyWeather(hours, source);
  }

  private static LocalDateTime time(WeatherCells cells) {
    try {
      return LocalDateTime.parse(cells.cell("time"));
    } catch (DateTimeException e) {
      throw cells.problem(
          ProblemCode.WRONG_TYPE,
          "'"
              + cells.cell("time")
              + "' is no time; write it as 2015-07-01T10:00, the beginning of the hour");
    }
  }
}
