package yardloom.climate.weather;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import yardloom.climate.et.formula.Air;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.table.CsvReader;

/**
 * The cells of one line of a weather record, by the names of its first line. Throws PlanException
 * (WRONG_TYPE, OUT_OF_RANGE) without a place, naming the line.
 */
record WeatherCells(List<String> header, List<String> cells, int line, String record) {
  private static final double COLDEST_C = -90;
  private static final double HOTTEST_C = 60;

  /** A storm of a whole day; a little more than a clear day anywhere on earth brings. */
  private static final double MOST_WIND_MS = 60;

  private static final double MOST_SOLAR_MJ = 45;
  private static final double MJ_PER_KWH = 3.6;

  /**
   * The lines of a record below its header, whose names are taken in lower case.
   *
   * @param record what messages call it
   * @param needed the columns that it must have
   * @param otherwise what is said if it lacks one
   */
  static List<WeatherCells> of(String text, String record, List<String> needed, String otherwise) {
    List<CsvReader.Row> rows = CsvReader.read(text, record);
    List<String> header =
        rows.isEmpty()
            ? List.of()
            : rows.get(0).texts().stream().map(n -> n.toLowerCase(Locale.ROOT)).toList();
    if (!header.containsAll(needed)) {
      throw new PlanException(ProblemCode.WRONG_TYPE, otherwise);
    }
    return rows.subList(1, rows.size()).stream()
        .map(row -> new WeatherCells(header, row.texts(), row.line(), record))
        .toList();
  }

  /** The text under a name; empty where the line or the record has none. */
  String cell(String name) {
    int at = header.indexOf(name);
    return at >= 0 && at < cells.size() ? cells.get(at) : "";
  }

  OptionalDouble wind(double heightM) {
    OptionalDouble ms = amount("wind_ms", 1, MOST_WIND_MS, "wind is 0 to 60 m/s (134 mph)");
    OptionalDouble any =
        ms.isPresent()
            ? ms
            : amount("wind_mph", Air.MS_PER_MPH, MOST_WIND_MS, "wind is 0 to 60 m/s (134 mph)");
    return any.isPresent() ? OptionalDouble.of(Air.windAt2m(any.getAsDouble(), heightM)) : any;
  }

  OptionalDouble solar() {
    String range = "radiation is 0 to 45 MJ (12.5 kWh) per square metre";
    OptionalDouble mj = amount("solar_mj", 1, MOST_SOLAR_MJ, range);
    return mj.isPresent() ? mj : amount("solar_kwh", MJ_PER_KWH, MOST_SOLAR_MJ, range);
  }

  private OptionalDouble amount(String name, double factor, double most, String range) {
    String text = cell(name);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      double value = Double.parseDouble(text) * factor;
      if (value >= 0 && value <= most) {
        return OptionalDouble.of(value);
      }
    } catch (NumberFormatException e) {
      throw problem(ProblemCode.WRONG_TYPE, name + " '" + text + "' is no number");
    }
    throw problem(ProblemCode.OUT_OF_RANGE, range + ", got " + name + " " + text);
  }

  double celsius(String name, boolean fahrenheit) {
    String text = cell(name);
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw problem(ProblemCode.WRONG_TYPE, "'" + text + "' is no temperature");
    }
    double celsius = fahrenheit ? (value - 32) * 5 / 9 : value;
    if (!(celsius >= COLDEST_C && celsius <= HOTTEST_C)) {
      throw problem(
          ProblemCode.OUT_OF_RANGE,
          "temperatures run from -90 to 60 °C (-130 to 140 °F), got "
              + text
              + (fahrenheit ? " °F" : " °C")
              + "; check the unit, and leave cells without a value empty");
    }
    // Limits of frost are whole degrees: no dust of the conversion may cross them.
    return Math.rint(celsius * 1e6) / 1e6;
  }

  PlanException problem(ProblemCode code, String message) {
    return new PlanException(code, "line " + line + " of " + record + ": " + message);
  }
}
