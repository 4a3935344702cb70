package yardloom.water.roof.formula;

import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Water that runs off a surface: plan area times rain times the share that is collected.
 *
 * <p>In US units 144/231 = 0.62338 gallons for each square foot and inch; manuals round this to
 * 0.62 or 0.623. The area is that of the plan, not of the slope.
 *
 * <p>References: [1] Texas A&amp;M AgriLife Extension, Rainwater harvesting, 2023 (0.62). [2] Texas
 * Water Development Board, The Texas Manual on Rainwater Harvesting, 2005 (method, from memory).
 */
public final class RainYield {
  private RainYield() {}

  /**
   * The yield.
   *
   * @throws IllegalArgumentException if the share is outside 0 to 1 or the rain negative
   */
  public static Volume of(Area plan, Length rain, double share) {
    if (!(share >= 0 && share <= 1) || rain.metres() < 0) {
      throw new IllegalArgumentException("share " + share + ", rain " + rain);
    }
    return plan.deep(rain).times(share);
  }
}
