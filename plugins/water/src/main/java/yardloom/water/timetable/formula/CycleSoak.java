package yardloom.water.timetable.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

/**
 * Watering in turns where outlets give more than the soil takes: a turn lasts until as much water
 * stands on the ground as may, storage / (rate − intake); the next starts when it has gone, storage /
 * intake later.
 *
 * <p>References: common arithmetic of cycle and soak; a public worked example with 0.26 in of
 * storage, 1.5 in/h and 0.2 in/h gives turns of 12 minutes and 78 minutes until all has soaked in
 * (read).
 */
public final class CycleSoak {
  private CycleSoak() {}

  /**
   * The longest turn, for a rate above the intake.
   *
   * @param storage depth that may stand on the ground
   * @param rate depth that one hour of watering gives
   * @param intake depth that the soil takes in an hour
   */
  public static TimeSpan longestTurn(Length storage, Length rate, Length intake) {
    if (rate.compareTo(intake) <= 0) {
      throw new IllegalArgumentException("rate " + rate + " is within the intake " + intake);
    }
    return TimeSpan.hours(storage.ratioTo(rate.minus(intake)));
  }

  /** How long to wait after a turn until its water has gone; zero where the soil keeps up. */
  public static TimeSpan soak(TimeSpan turn, Length rate, Length intake) {
    return rate.compareTo(intake) <= 0
        ? TimeSpan.ZERO
        : turn.times(rate.minus(intake).ratioTo(intake));
  }
}
