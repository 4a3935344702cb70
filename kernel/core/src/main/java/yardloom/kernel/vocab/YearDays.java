package yardloom.kernel.vocab;

import java.time.DateTimeException;
import java.time.MonthDay;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** Days of the year as plans write them. */
public final class YearDays {
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
}
