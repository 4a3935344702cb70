package yardloom.kernel.ground;

import java.util.List;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Volumes from sections and grids.
 *
 * <p>The average end area overstates cones and wedges (by half for a pyramid), the prismoidal
 * formula does not; many sum end areas but take the pyramid where one end is zero.
 *
 * <p>References: [1] Wikibooks, Fundamentals of Transportation, Earthwork. [2] G. Vose, Handbook of
 * Railroad Construction, 1857, section 108.
 */
public final class Earthwork {
  private Earthwork() {}

  /** L (A₁ + A₂)/2. */
  public static Volume endArea(Area first, Area second, Length apart) {
    return first.plus(second).deep(apart.div(2));
  }

  /** L (A₁ + A₂)/2, or the pyramid L A/3 where one end is zero. */
  public static Volume endAreaOrPyramid(Area first, Area second, Length apart) {
    boolean pyramid = (first.squareMetres() == 0) != (second.squareMetres() == 0);
    return pyramid ? first.plus(second).deep(apart.div(3)) : endArea(first, second, apart);
  }

  /** L (A₁ + 4 Aₘ + A₂)/6 with the section in the middle. */
  public static Volume prismoidal(Area first, Area middle, Area second, Length apart) {
    return Volume.cubicMetres(
        (first.squareMetres() + 4 * middle.squareMetres() + second.squareMetres())
            * apart.metres()
            / 6);
  }

  /** The mean of the four corner depths times the area of a grid cell. */
  public static Volume gridCell(List<Length> cornerDepths, Area cell) {
    double meanM = cornerDepths.stream().mapToDouble(Length::metres).average().orElse(0);
    return Volume.cubicMetres(meanM * cell.squareMetres());
  }
}
