package yardloom.climate.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.problem.ProblemCode;

/**
 * Reads daily extremes of temperature from comma-separated text: a first line with the columns
 * {@code date}, {@code max} and {@code min} in any order, dates as year-month-day; {@code dew},
 * {@code wind_ms} or {@code wind_mph} and {@code solar_mj} or {@code solar_kwh} where they were
 * measured, their cells may be empty. Days without both temperatures are left out. Throws
 * PlanException (WRONG_TYPE, OUT_OF_RANGE, DUPLICATE) without a place, naming the line.
 */
public final class DailyWeatherText {
  private DailyWeatherText() {}

  /**
   * The record.
   *
   * @param fahrenheit whether the temperatures are in degrees Fahrenheit, not Celsius
   * @param windHeightM how high above the ground the wind was measured
   */
  public static DailyWeather read(
      String text, boolean fahrenheit, double windHeightM, String source) {
    List<WeatherCells> lines =
        WeatherCells.of(
            text,
            "the weather record",
            List.of("date", "max", "min"),
            "a weather record begins with a line that names the columns date, max and min,"
                + " separated by commas");
    SortedMap<LocalDate, DailyWeather.Day> days = new TreeMap<>();
    for (WeatherCells cells : lines) {
      if (cells.cell("max").isEmpty() || cells.cell("min").isEmpty()) {
        continue;
      }
      LocalDate date = date(cells);
      DailyWeather.Day day =
          new DailyWeather.Day(
              cells.celsius("max", fahrenheit),
              cells.celsius("min", fahrenheit),
              cells.cell("dew").isEmpty()
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(cells.celsius("dew", fahrenheit)),
              cells.wind(windHeightM),
              cells.solar());
      if (day.minC() > day.maxC()) {
        throw cells.problem(ProblemCode.OUT_OF_RANGE, "the minimum is above the maximum");
      }
      if (days.put(date, day) != null) {
        throw cells.problem(ProblemCode.DUPLICATE, date + " is given twice");
      }
    }
    return new DailyWeather(days, source);
  }

  private static LocalDate date(WeatherCells cells) {
    try {
      return LocalDate.parse(cells.cell("date"));
    } catch (DateTimeException e) {
      throw cells.problem(
          ProblemCode.WRONG_TYPE,
          "'" + cells.cell("date") + "' is no date; write it as 2020-04-15");
    }
  }
}
