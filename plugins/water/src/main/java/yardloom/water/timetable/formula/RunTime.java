package yardloom.water.timetable.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

/**
 * The time that an irrigation runs to put a net depth into the soil: depth / (application rate ×
 * efficiency).
 *
 * <p>References: common irrigation arithmetic, run time in minutes = 60 × depth / (rate ×
 * efficiency); efficiency of drip at least 0.81 in the California model ordinance worksheet.
 */
public final class RunTime {
  private RunTime() {}

  /**
   * The time.
   *
   * @param depth net depth, not negative
   * @param perHour depth that one hour puts on the ground, above 0
   * @param efficiency share of it that reaches the roots, above 0 and up to 1
   */
  public static TimeSpan of(Length depth, Length perHour, double efficiency) {
    if (depth.metres() < 0 || perHour.metres() <= 0 || !(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException(
          "depth " + depth + ", rate " + perHour + " an hour, efficiency " + efficiency);
    }
    return TimeSpan.hours(depth.ratioTo(perHour) / efficiency);
  }
}
