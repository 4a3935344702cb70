package yardloom.planting.care.formula;

import java.time.LocalDate;
import java.time.MonthDay;
import yardloom.kernel.unit.YearDay;

/**
 * One growing season, from the last frost of spring to the first frost of fall after it; on either
 * side of the equator.
 *
 * <p>References: own construction; frost days as the plan's climate gives them.
 *
 * @param year in which its last frost falls
 * @param lastFrost its first day
 * @param firstFrost the frost that ends it
 */
public record Season(int year, LocalDate lastFrost, LocalDate firstFrost) {
  /**
   * What is planted later than so long before its end has its first season in the next: common
   * practice.
   */
  private static final int TOO_LATE_DAYS = 60;

  public static Season of(int year, MonthDay lastFrost, MonthDay firstFrost) {
    LocalDate last = lastFrost.atYear(year);
    LocalDate first = firstFrost.atYear(year);
    return new Season(year, last, first.isAfter(last) ? first : firstFrost.atYear(year + 1));
  }

  /** The first season of what is planted on a day: that which leaves it two months to grow. */
  public static Season firstOf(LocalDate planted, MonthDay lastFrost, MonthDay firstFrost) {
    Season season = of(planted.getYear() - 1, lastFrost, firstFrost);
    while (season.firstFrost().minusDays(TOO_LATE_DAYS).isBefore(planted)) {
      season = of(season.year() + 1, lastFrost, firstFrost);
    }
    return season;
  }

  /** The day so many days after its last frost, before it if negative. */
  public LocalDate day(int days) {
    return lastFrost.plusDays(days);
  }

  /** The date within a year from 120 days before its last frost that has this month and day. */
  public LocalDate on(MonthDay day) {
    return YearDay.next(day, lastFrost.minusDays(120));
  }
}
