package yardloom.water.need.formula;

import yardloom.kernel.unit.Length;

/**
 * The depth of irrigation that a crop needs in a period: crop coefficient times reference
 * evapotranspiration, less effective rain, never below zero.
 *
 * <p>Water stored in the soil from an earlier period is not counted, which errs on the dry side.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 58 (ETc = Kc ETo).
 */
public final class NetNeed {
  private NetNeed() {}

  public static Length of(double cropCoefficient, Length referenceEt, Length effectiveRain) {
    return referenceEt.times(cropCoefficient).minus(effectiveRain).max(Length.ZERO);
  }
}
