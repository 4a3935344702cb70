package yardloom.kernel.unit;

import java.time.LocalDate;
import java.time.MonthDay;

/** Days that come each year, on the calendar. */
public final class YearDay {
  private YearDay() {}

  /** The first such day from a date on, which may be that; 29 Feb is the 28th in other years. */
  public static LocalDate next(MonthDay day, LocalDate from) {
    LocalDate date = day.atYear(from.getYear());
    return date.isBefore(from) ? day.atYear(from.getYear() + 1) : date;
  }

  /**
   * Whether a date lies in a stretch of the year.
   *
   * @param from its first day
   * @param until its last day; before {@code from} where it runs across New Year
   */
  public static boolean isWithin(LocalDate date, MonthDay from, MonthDay until) {
    MonthDay day = MonthDay.from(date);
    boolean late = day.compareTo(from) >= 0;
    boolean early = day.compareTo(until) <= 0;
    return from.compareTo(until) <= 0 ? late && early : late || early;
  }
}
