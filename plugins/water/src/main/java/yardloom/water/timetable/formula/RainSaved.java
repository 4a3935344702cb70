package yardloom.water.timetable.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

/**
 * How long plants live on one rain: what of it stays in the root zone over what they use in a day.
 *
 * <p>The root zone keeps no more than its ready water: what is beyond may lie below the roots. So
 * the time is a safe one. Whatever had been drawn before the rain, as long as it was ready water,
 * the plants are not short within it: if the rain fills the zone they live on all of its ready
 * water, else on the whole rain.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 83 (ready water) and 85 (daily balance).
 */
public final class RainSaved {
  private RainSaved() {}

  /**
   * The time, 0 where no rain stays.
   *
   * @param usable part of the rain that plants can use
   * @param ready water that roots draw without stress
   * @throws IllegalArgumentException where nothing is used
   */
  public static TimeSpan of(Length usable, Length ready, Length usePerDay) {
    if (usePerDay.metres() <= 0) {
      throw new IllegalArgumentException("use per day " + usePerDay);
    }
    return TimeSpan.days(usable.min(ready).ratioTo(usePerDay));
  }
}
