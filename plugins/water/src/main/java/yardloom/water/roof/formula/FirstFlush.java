package yardloom.water.roof.formula;

import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * The first rain of a storm that is led past the tank, with what the roof has gathered.
 *
 * <p>Given as a depth over the roof; {@link #LEAST} is the usual least, ten gallons for each
 * thousand square feet (0.016 in, 0.41 mm).
 *
 * <p>References: [1] a trade page on first-flush diverters, 10 gal/1,000 ft² and the pipe lengths
 * of a gallon. [2] Texas Water Development Board, The Texas Manual on Rainwater Harvesting, 2005
 * (half a gallon to two gallons per 100 ft², from memory).
 */
public final class FirstFlush {
  /** Ten gallons over a thousand square feet, as a depth. */
  public static final Length LEAST =
      Length.metres(Volume.gallons(10).cubicMetres() / Area.squareFeet(1000).squareMetres());

  private FirstFlush() {}

  public static Volume of(Area roof, Length depth) {
    if (depth.metres() < 0) {
      throw new IllegalArgumentException("first-flush depth " + depth);
    }
    return roof.deep(depth);
  }

  /** The length of a standing pipe that holds {@code volume}. */
  public static Length pipe(Volume volume, Length insideDiameter) {
    if (insideDiameter.metres() <= 0) {
      throw new IllegalArgumentException("diameter " + insideDiameter);
    }
    double section = Math.PI / 4 * insideDiameter.metres() * insideDiameter.metres();
    return Length.metres(volume.cubicMetres() / section);
  }
}
