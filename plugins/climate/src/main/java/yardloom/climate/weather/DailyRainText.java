package yardloom.climate.weather;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import yardloom.facts.DailyRain;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.table.CsvReader;
import yardloom.kernel.unit.Length;

/**
 * Reads rain by the day: a first line {@code date,rain_mm} or {@code date,rain_in}, then one line
 * for each day in order, such as {@code 2012-11-19,54.1}.
 *
 * <p>Errors: PlanException (SYNTAX, OUT_OF_RANGE, CONTRADICTION) without a place, naming the line.
 */
public final class DailyRainText {
  private static final int LEAST_DAYS = 365;

  /** More has not been measured in 24 hours anywhere: 1,825 mm, La Réunion, 1966 (from memory). */
  private static final Length MOST = Length.millimetres(1825);

  private DailyRainText() {}

  public static List<DailyRain.Day> read(String text) {
    List<CsvReader.Row> rows = CsvReader.read(text, "the daily rain");
    Length step = step(rows.isEmpty() ? "" : String.join(",", rows.get(0).texts()));
    List<DailyRain.Day> days = new ArrayList<>();
    for (CsvReader.Row row : rows.subList(Math.min(1, rows.size()), rows.size())) {
      DailyRain.Day day = day(row.texts(), row.line(), step);
      follow(days, day, row.line());
      days.add(day);
    }
    if (days.size() < LEAST_DAYS) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "daily rain needs a whole year, 365 days at least; the table has "
              + days.size()
              + "; add the missing days, with 0 where none fell");
    }
    return days;
  }

  private static Length step(String header) {
    return switch (header) {
      case "date,rain_mm" -> Length.millimetres(1);
      case "date,rain_in" -> Length.inches(1);
      default ->
          throw new PlanException(
              ProblemCode.SYNTAX,
              "line 1 of the daily rain must be `date,rain_mm` or `date,rain_in`, got '"
                  + shortened(header)
                  + "'");
    };
  }

  private static DailyRain.Day day(List<String> parts, int number, Length step) {
    try {
      if (parts.size() == 2) {
        double amount = Double.parseDouble(parts.get(1));
        if (!(amount >= 0 && amount * step.metres() <= MOST.metres())) {
          throw new PlanException(
              ProblemCode.OUT_OF_RANGE,
              "line "
                  + number
                  + " of the daily rain: a day has 0 to 1825 mm (72 in), got "
                  + parts.get(1));
        }
        return new DailyRain.Day(LocalDate.parse(parts.get(0)), step.times(amount));
      }
    } catch (DateTimeException | NumberFormatException e) {
      // Said below, with what is expected.
    }
    throw new PlanException(
        ProblemCode.SYNTAX,
        "line "
            + number
            + " of the daily rain must be a date and an amount such as 2012-11-19,54.1; got '"
            + shortened(String.join(",", parts))
            + "'");
  }

  private static String shortened(String text) {
    return text.length() > 40 ? text.substring(0, 40) + "…" : text;
  }

  private static void follow(List<DailyRain.Day> days, DailyRain.Day day, int number) {
    if (!days.isEmpty()) {
      LocalDate expected = days.get(days.size() - 1).date().plusDays(1);
      if (!day.date().equals(expected)) {
        throw new PlanException(
            ProblemCode.CONTRADICTION,
            "line "
                + number
                + " of the daily rain: "
                + expected
                + " should come next, got "
                + day.date()
                + "; every day needs one line, in order");
      }
    }
  }
}
