package yardloom.planting.window.formula;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * A stretch of the year that is told in days from the usual frosts. Works on either side of the
 * equator.
 *
 * <p>References: days from the usual frosts are how planting calendars are printed, common
 * practice; the days of each group have their sources in the catalogue.
 *
 * @param how as what a plant is planted then
 * @param from its first day
 * @param until its last
 */
public record PlantingTime(String how, Offset from, Offset until) {
  /** Any year without a leap day. */
  private static final int YEAR = 2021;

  /**
   * By how many days the season between the frosts is too short for planting on the first day; 0
   * where it is not, or where it does not run from a frost of spring to one of fall.
   */
  public int shortBy(MonthDay lastFrost, MonthDay firstFrost) {
    if (from.frost() != Frost.LAST || until.frost() != Frost.FIRST) {
      return 0;
    }
    LocalDate spring = lastFrost.atYear(YEAR);
    LocalDate fall = firstFrost.atYear(YEAR);
    LocalDate end = fall.isAfter(spring) ? fall : fall.plusYears(1);
    return (int)
        Math.max(
            0, spring.plusDays(from.days()).toEpochDay() - end.plusDays(until.days()).toEpochDay());
  }

  /** The frost that days are counted from. */
  public enum Frost {
    /** The last one of spring. */
    LAST,
    /** The first one of fall. */
    FIRST
  }

  /** Days after a frost, before it if negative. */
  public record Offset(Frost frost, int days) {
    public MonthDay day(MonthDay lastFrost, MonthDay firstFrost) {
      MonthDay start = frost == Frost.LAST ? lastFrost : firstFrost;
      return MonthDay.from(start.atYear(YEAR).plusDays(days));
    }
  }
}
