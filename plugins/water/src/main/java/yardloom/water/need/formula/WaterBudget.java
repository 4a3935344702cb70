package yardloom.water.need.formula;

import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * A year's water allowance and estimated use of a landscape, after California's model ordinance.
 *
 * <p>The ordinance rounds 144/231 = 0.62338 gal per square foot and inch to 0.62, and so do these.
 * Food beds count as special landscape area, which has the full allowance. The allowance is for
 * ornamental landscapes; for a food bed's need use {@link NetNeed}.
 *
 * <p>References: [1] California Department of Water Resources, Model Water Efficient Landscape
 * Ordinance, worksheet as in Ventura County code Appendix L3 and the 2009 example for Fresno.
 */
public final class WaterBudget {
  /** Gallons of one inch on one square foot, as the ordinance writes it. */
  public static final double GALLONS = 0.62;

  /** Largest factor of homes. */
  public static final double HOME_FACTOR = 0.55;

  /** Largest factor of other places. */
  public static final double OTHER_FACTOR = 0.45;

  /** Printed beside the efficiencies. */
  public static final Source EFFICIENCIES =
      Source.read(
          "Model Water Efficient Landscape Ordinance worksheet, as in Ventura County code App. L3",
          "California Department of Water Resources",
          0,
          "irrigation efficiency: spray 0.75, drip 0.81");

  /** Least efficiency of spray heads. */
  public static final double SPRAY_EFFICIENCY = 0.75;

  /** Least efficiency of drip. */
  public static final double DRIP_EFFICIENCY = 0.81;

  private WaterBudget() {}

  /**
   * The most that a landscape may use in a year: ETo × 0.62 × (factor × all area + (1 − factor) ×
   * special area).
   *
   * @param all landscape area with the special area in it
   */
  public static Volume allowance(Length yearlyEt, double factor, Area all, Area special) {
    if (special.compareTo(all) > 0) {
      throw new IllegalArgumentException("the special area is part of the landscape area");
    }
    return volume(
        yearlyEt.inches(), factor * all.squareFeet() + (1 - factor) * special.squareFeet());
  }

  /** ETo × 0.62 × plant factor / efficiency × area. */
  public static Volume use(Length yearlyEt, double plantFactor, double efficiency, Area area) {
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException("irrigation efficiency " + efficiency);
    }
    return volume(yearlyEt.inches(), plantFactor / efficiency * area.squareFeet());
  }

  /** ETo less a quarter of the year's rain, where a code grants it. */
  public static Length lessRain(Length yearlyEt, Length yearlyRain) {
    return yearlyEt.minus(yearlyRain.times(0.25)).max(Length.ZERO);
  }

  private static Volume volume(double inches, double squareFeet) {
    return Volume.gallons(inches * GALLONS * squareFeet);
  }
}
