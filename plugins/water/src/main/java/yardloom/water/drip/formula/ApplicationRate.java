package yardloom.water.drip.formula;

import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;

/**
 * The depth that one hour of watering puts on the ground.
 *
 * <p>In US units 231 × gph / (row spacing × outlet spacing) in inches, exactly; sheets that print
 * 231.1 are off. In metric units litres an hour on a square metre are millimetres an hour.
 *
 * <p>References: definition; 1 gal = 231 in³ (NIST Special Publication 811).
 */
public final class ApplicationRate {
  private ApplicationRate() {}

  /** Of a flow over an area. */
  public static Length perHour(Flow flow, Area area) {
    if (area.squareMetres() <= 0) {
      throw new IllegalArgumentException("an application rate needs some area");
    }
    return Length.metres(flow.during(TimeSpan.hours(1)).cubicMetres() / area.squareMetres());
  }
}
