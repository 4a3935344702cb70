package yardloom.kernel.vocab;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** Days of the year and dates as plans write them. */
public final class YearDays {
  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2199;

  private YearDays() {}

  /**
   * Reads {@code 04-15}.
   *
   * @throws PlanException (WRONG_TYPE) if it is no day of the year
   */
  public static MonthDay read(SourceRef place, String text) {
    try {
      return MonthDay.parse("--" + text);
    } catch (DateTimeException e) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          place,
          "'" + text + "' is not a day of the year; write month-day, such as '04-15'");
    }
  }

  /**
   * Reads {@code 2028-03-06}. The years are those of a yard's life: sums of days stay dates.
   *
   * @param example a date for the message
   * @throws PlanException (WRONG_TYPE) if it is no date, (OUT_OF_RANGE) if its year is not one from
   *     1900 to 2199
   */
  public static LocalDate date(SourceRef place, String text, String example) {
    LocalDate date;
    try {
      date = LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          place,
          "'" + text + "' is not a date of the form '" + example + "'");
    }
    if (date.getYear() < FIRST_YEAR || date.getYear() > LAST_YEAR) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          "'" + text + "' is not in the years from " + FIRST_YEAR + " to " + LAST_YEAR);
    }
    return date;
  }
}
