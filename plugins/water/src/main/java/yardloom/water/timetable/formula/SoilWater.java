package yardloom.water.timetable.formula;

import yardloom.kernel.unit.Length;

/**
 * Water in the root zone and what plants do as it runs out, after FAO-56.
 *
 * <p>Depletion is counted from field capacity down and stays within 0 and the total.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 82 to 85 and the footnote of Table 22, as coded in pyfao56
 * (USDA-ARS).
 */
public final class SoilWater {
  private SoilWater() {}

  /** All that roots can draw: (field capacity − wilting point) × root depth. */
  public static Length total(double fieldCapacity, double wiltingPoint, Length rootDepth) {
    if (fieldCapacity < wiltingPoint) {
      throw new IllegalArgumentException(
          "field capacity " + fieldCapacity + " below wilting point " + wiltingPoint);
    }
    return rootDepth.times(fieldCapacity - wiltingPoint);
  }

  /** What they draw without stress. */
  public static Length ready(Length total, double easyShare) {
    return total.times(easyShare);
  }

  /** The easy share of a table, adjusted to the day's crop use and held to 0.1 to 0.8. */
  public static double easyShare(double tabled, Length useOfDay) {
    return Math.max(0.1, Math.min(0.8, tabled + 0.04 * (5 - useOfDay.millimetres())));
  }

  /** The share of full use that goes on at a depletion: 1 down to the ready water, then to 0. */
  public static double stress(Length total, Length ready, Length depletion) {
    if (depletion.compareTo(ready) <= 0) {
      return 1;
    }
    if (depletion.compareTo(total) >= 0) {
      return 0;
    }
    return total.minus(depletion).ratioTo(total.minus(ready));
  }

  /** The depletion after one more day. */
  public static Length depleted(Length before, Length use, Length water, Length total) {
    return before.plus(use).minus(water).max(Length.ZERO).min(total);
  }
}
