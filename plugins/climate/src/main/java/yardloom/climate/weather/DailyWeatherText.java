package yardloom.climate.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.table.CsvReader;

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
    List<CsvReader.Row> rows = CsvReader.read(text, "the weather record");
    List<Integer> columns = columns(rows.isEmpty() ? List.of() : rows.get(0).texts());
    if (columns.contains(-1)) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          "a weather record begins with a line that names the columns date, max and min,"
              + " separated by commas");
    }
    SortedMap<LocalDate, DailyWeather.Day> days = new TreeMap<>();
    for (CsvReader.Row row : rows.subList(1, rows.size())) {
      List<String> cells = row.texts();
      String max = cell(cells, columns.get(1));
      String min = cell(cells, columns.get(2));
      if (max.isEmpty() || min.isEmpty()) {
        continue;
      }
      WeatherCells more = new WeatherCells(rows.get(0).texts(), cells, row.line());
      LocalDate date = date(cell(cells, columns.get(0)), row.line());
      DailyWeather.Day day =
          new DailyWeather.Day(
              more.celsius(max, fahrenheit),
              more.celsius(min, fahrenheit),
              more.cell("dew").isEmpty()
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(more.celsius(more.cell("dew"), fahrenheit)),
              more.wind(windHeightM),
              more.solar());
      if (day.minC() > day.maxC()) {
        throw problem(ProblemCode.OUT_OF_RANGE, row.line(), "the minimum is above the maximum");
      }
      if (days.put(date, day) != null) {
        throw problem(ProblemCode.DUPLICATE, row.line(), date + " is given twice");
      }
    }
    return new DailyWeather(days, source);
  }

  /** Where date, max and min stand; −1 where they do not. */
  private static List<Integer> columns(List<String> header) {
    List<String> names = header.stream().map(n -> n.toLowerCase(Locale.ROOT)).toList();
    return List.of(names.indexOf("date"), names.indexOf("max"), names.indexOf("min"));
  }

  private static String cell(List<String> cells, int column) {
    return column < cells.size() ? cells.get(column) : "";
  }

  private static LocalDate date(String text, int line) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw problem(
          ProblemCode.WRONG_TYPE, line, "'" + text + "' is no date; write it as 2020-04-15");
    }
  }

  private static PlanException problem(ProblemCode code, int line, String message) {
    return new PlanException(code, "line " + line + " of the weather record: " + message);
  }
}
