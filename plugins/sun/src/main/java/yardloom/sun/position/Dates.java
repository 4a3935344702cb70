package yardloom.sun.position;

import java.time.MonthDay;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.YearDays;

/** From one day of the year to another, both included; may run over the turn of the year. */
public record Dates(MonthDay from, MonthDay to) {
  /**
   * From {@code 04-15} to {@code 11-01}, as plans write it.
   *
   * @throws yardloom.kernel.problem.PlanException (WRONG_TYPE) if either is no day of the year
   */
  public static Dates read(SourceRef place, String from, String to) {
    return new Dates(YearDays.read(place, from), YearDays.read(place, to));
  }

  /** Whether a day of the year, 0 to 364, lies in it. */
  public boolean holds(int day) {
    int first = SunYear.day(from);
    int last = SunYear.day(to);
    return first <= last ? first <= day && day <= last : first <= day || day <= last;
  }
}
