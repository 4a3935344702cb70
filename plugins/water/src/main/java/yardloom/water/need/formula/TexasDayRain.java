package yardloom.water.need.formula;

import yardloom.kernel.unit.Length;

/**
 * Effective rain of a day: nothing of the first tenth of an inch, all up to one inch, two thirds up
 * to two inches, nothing of what is above.
 *
 * <p>References: [1] TexasET Network, Texas A&amp;M AgriLife Extension, Effective Rainfall (the
 * limit of two inches from memory).
 */
public final class TexasDayRain {
  private TexasDayRain() {}

  public static Length effective(Length rain) {
    double p = Math.min(2, rain.inches());
    if (p <= 0.1) {
      return Length.ZERO;
    }
    return Length.inches(p <= 1 ? p - 0.1 : 0.9 + (p - 1) * 2 / 3);
  }
}
