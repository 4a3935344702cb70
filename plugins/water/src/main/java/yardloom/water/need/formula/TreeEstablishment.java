package yardloom.water.need.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;

/**
 * Watering of a newly planted tree until its roots are out.
 *
 * <p>Each inch of trunk takes 1.5 years and 1 to 1.5 gallons a watering; daily for two weeks, every
 * two to three days to week twelve, then weekly. For northern places; longer in hot dry ones.
 *
 * <p>References: [1] University of Minnesota Extension, Watering newly planted trees and shrubs.
 */
public final class TreeEstablishment {
  private static final double YEARS_PER_INCH = 1.5;

  private TreeEstablishment() {}

  /** Years until it looks after itself. */
  public static double years(Length trunk) {
    return YEARS_PER_INCH * trunk.inches();
  }

  /** The least of one watering; half as much again is the most. */
  public static Volume least(Length trunk) {
    return Volume.gallons(trunk.inches());
  }

  public static Volume most(Length trunk) {
    return Volume.gallons(1.5 * trunk.inches());
  }

  /** The longest time between waterings in a week after planting, 1 being the first. */
  public static TimeSpan interval(int week) {
    if (week < 1) {
      throw new IllegalArgumentException("week " + week);
    }
    return TimeSpan.days(week <= 2 ? 1 : week <= 12 ? 3 : 7);
  }
}
