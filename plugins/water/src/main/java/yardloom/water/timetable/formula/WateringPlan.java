package yardloom.water.timetable.formula;

import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

/**
 * How often to water, and by how much an uneven system runs longer.
 *
 * <p>References: common irrigation arithmetic (interval = held water × share allowed to dry ÷ daily
 * use); NRCS Conservation Practice Standard 441 slides for the wetted share; the multiplier 1/(0.4
 * + 0.6 DU) is the Irrigation Association's, from memory.
 */
public final class WateringPlan {
  private WateringPlan() {}

  /**
   * The time between waterings.
   *
   * @param heldPerDepth depth of water that a depth of soil holds for plants, such as 0.125
   * @param rootZone depth of the roots
   * @param dryShare share of it that may dry out between waterings
   */
  public static TimeSpan interval(
      double heldPerDepth, Length rootZone, double dryShare, Length usePerDay) {
    if (usePerDay.metres() <= 0) {
      throw new IllegalArgumentException("use per day " + usePerDay);
    }
    return TimeSpan.days(rootZone.times(heldPerDepth * dryShare).ratioTo(usePerDay));
  }

  /** How much longer to run so that the driest quarter has enough. */
  public static double multiplierByLowQuarter(double lowQuarter) {
    return 1 / lowQuarter;
  }

  /** The milder multiplier for lawns, whose roots share water. */
  public static double multiplierByLowHalf(double lowQuarter) {
    return 1 / (0.4 + 0.6 * lowQuarter);
  }

  /** Mean depth over the depth of the driest spot. */
  public static double schedulingCoefficient(double mean, double lowest) {
    return mean / lowest;
  }

  /** Share of the root area that is wetted, at most 1. */
  public static double wettedShare(Area wetted, Area roots) {
    return Math.min(1, wetted.ratioTo(roots));
  }
}
