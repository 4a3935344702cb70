package yardloom.climate.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.table.CsvReader;

/**
 * Reads daily extremes of temperature from comma-separated text: a first line with the columns
 * {@code date}, {@code max} and {@code min} in any order, dates as year-month-day. Days without
 * both temperatures are left out. Throws PlanException (WRONG_TYPE, OUT_OF_RANGE, DUPLICATE)
 * without a place, naming the line.
 */
public final class DailyWeatherText {
  private static final double COLDEST_C = -90;
  private static final double HOTTEST_C = 60;

  private DailyWeatherText() {}

  /**
   * The record.
   *
   * @param fahrenheit whether the temperatures are in degrees Fahrenheit, not Celsius
   */
  public static DailyWeather read(String text, boolean fahrenheit, String source) {
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
      LocalDate date = date(cell(cells, columns.get(0)), row.line());
      DailyWeather.Day day =
          new DailyWeather.Day(
              celsius(max, fahrenheit, row.line()), celsius(min, fahrenheit, row.line()));
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

  private static double celsius(String text, boolean fahrenheit, int line) {
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw problem(ProblemCode.WRONG_TYPE, line, "'" + text + "' is no temperature");
    }
    double celsius = fahrenheit ? (value - 32) * 5 / 9 : value;
    if (!(celsius >= COLDEST_C && celsius <= HOTTEST_C)) {
      throw problem(
          ProblemCode.OUT_OF_RANGE,
          line,
          "temperatures run from -90 to 60 °C (-130 to 140 °F), got "
              + text
              + (fahrenheit ? " °F" : " °C")
              + "; check the unit, and leave cells without a value empty");
    }
    // Limits of frost are whole degrees: no dust of the conversion may cross them.
    return Math.rint(celsius * 1e6) / 1e6;
  }

  private static PlanException problem(ProblemCode code, int line, String message) {
    return new PlanException(code, "line " + line + " of the weather record: " + message);
  }
}
