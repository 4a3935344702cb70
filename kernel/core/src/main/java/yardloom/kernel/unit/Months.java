package yardloom.kernel.unit;

import java.util.List;

/** The months of a year of 365 days. */
public final class Months {
  private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  private static final List<String> NAMES =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  private Months() {}

  /** The days of month 0 (January) to 11. */
  public static int days(int month) {
    return DAYS[month];
  }

  /** The short English name. */
  public static String name(int month) {
    return NAMES.get(month);
  }

  /** The day of the year in the middle of the month, after FAO-56 Annex 2. */
  public static int middleDay(int month) {
    return (int) (30.4 * (month + 1) - 15);
  }
}
