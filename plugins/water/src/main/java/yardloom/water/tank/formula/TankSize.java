package yardloom.water.tank.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * A first guess at a tank: five percent of the lesser of a year's yield and a year's demand, about
 * 18 days of use; and the volume of a round tank.
 *
 * <p>Good for even rain through the year; with a dry season use {@link TankBehaviour}.
 *
 * <p>References: [1] BSI, BS 8515:2009, intermediate approach, as quoted by suppliers. [2] M. G.
 * Kains, Five Acres and Independence, cistern capacities.
 */
public final class TankSize {
  private static final double SHARE = 0.05;

  private TankSize() {}

  public static Volume fivePercent(Volume annualYield, Volume annualDemand) {
    return annualYield.min(annualDemand).times(SHARE);
  }

  /** What a standing cylinder holds when full. */
  public static Volume cylinder(Length diameter, Length height) {
    double section = Math.PI / 4 * diameter.metres() * diameter.metres();
    return Volume.cubicMetres(section * height.metres());
  }
}
