package yardloom.kernel.unit;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;

/** The months of a year of 365 days. */
public final class Months {
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  private static final List<String> NAMES =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  private static final int MIDDLE = 15;

  /** A year without a leap day. */
  private static final int YEAR = 2021;

  private Months() {}

  /** The days of month 0 (January) to 11. */
  public static int days(int month) {
    return DAYS[month];
  }

  /** The short English name. */
  public static String name(int month) {
    return NAMES.get(month);
  }

  /** The short English name. */
  public static String name(Month month) {
    return name(month.getValue() - 1);
  }

  /** The whole English name, the same from any Java. */
  public static String fullName(Month month) {
    return month.name().charAt(0) + month.name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** The first date of that day of the year from a date on; 29 Feb is the 28th in other years. */
  public static LocalDate next(MonthDay day, LocalDate from) {
    LocalDate date = day.atYear(from.getYear());
    return date.isBefore(from) ? day.atYear(from.getYear() + 1) : date;
  }

  /** The day so many days after the 15th of a month, which stands for its middle on a calendar. */
  public static MonthDay afterMiddle(int month, int days) {
    return MonthDay.from(LocalDate.of(YEAR, month + 1, MIDDLE).plusDays(days));
  }

  /**
   * How many days after the 15th of a month a straight line from there to the 15th of the next
   * passes a value.
   *
   * @param from what it has on the 15th of the month
   * @param to the same a month later; not the same as {@code from}
   */
  public static double daysToPass(int month, double from, double to, double value) {
    return days(month) * ((value - from) / (to - from));
  }

  /** The day of the year in the middle of the month, after FAO-56 Annex 2. */
  public static int middleDay(int month) {
    return (int) (30.4 * (month + 1) - 15);
  }
}
