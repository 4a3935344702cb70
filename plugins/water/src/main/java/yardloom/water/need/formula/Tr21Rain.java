package yardloom.water.need.formula;

import yardloom.kernel.unit.Length;

/**
 * Effective rain of a month by SCS TR-21, from rain, crop use and the depth that irrigation
 * refills.
 *
 * <p>Re = f(D) × (0.70917 P^0.82416 − 0.11556) × 10^(0.02426 ETc), f(D) = 0.531747 + 0.295164 D −
 * 0.057697 D² + 0.003804 D³, all in inches a month. Held between 0 and the lesser of rain and crop
 * use; rain below about 0.11 in gives nothing.
 *
 * <p>References: [1] USDA SCS, Technical Release 21, 1970, as coded in the State of Colorado's
 * StateCU (xcrain).
 */
public final class Tr21Rain {
  private Tr21Rain() {}

  /** The factor of the depth that one irrigation refills. */
  public static double storageFactor(Length refill) {
    double d = refill.inches();
    return 0.531747 + 0.295164 * d - 0.057697 * d * d + 0.003804 * d * d * d;
  }

  public static Length effective(Length rain, Length cropUse, Length refill) {
    double p = rain.inches();
    double raw =
        storageFactor(refill)
            * (0.70917 * StrictMath.pow(Math.max(0, p), 0.82416) - 0.11556)
            * StrictMath.pow(10, 0.02426 * cropUse.inches());
    return Length.inches(Math.max(0, Math.min(raw, Math.min(p, cropUse.inches()))));
  }
}
