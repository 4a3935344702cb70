package yardloom.kernel.ground;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Volumes from sections and grids.
 *
 * <p>The average end area overstates cones and wedges (by half for a pyramid); many sum end areas
 * but take the pyramid where one end is zero.
 *
 * <p>References: [1] Wikibooks, Fundamentals of Transportation, Earthwork. [2] G. Vose, Handbook of
 * Railroad Construction, 1857, section 108.
 */
public final class Earthwork {
  /** Printed beside volumes by sections. */
  public static final Source SECTIONS =
      Source.read("Handbook of Railroad Construction", "G. Vose", 1857, "section 108");

  /** Printed beside volumes by a grid. */
  public static final Source GRID = Source.commonPractice("grid method of earthwork");

  /** Earth above and below what is wanted, both positive. */
  public record Moved(Volume cut, Volume fill) {}

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

  /** The mean of the four corner depths times the area of a grid cell. */
  public static Volume gridCell(List<Length> cornerDepths, Area cell) {
    double meanM = cornerDepths.stream().mapToDouble(Length::metres).average().orElse(0);
    return Volume.cubicMetres(meanM * cell.squareMetres());
  }

  /** Sections at even distances, summed; a body that runs out to nothing counts as a pyramid. */
  public static Volume along(List<Area> sections, Length every) {
    Volume sum = Volume.ZERO;
    for (int i = 1; i < sections.size(); i++) {
      sum = sum.plus(endAreaOrPyramid(sections.get(i - 1), sections.get(i), every));
    }
    return sum;
  }

  /**
   * Cells between the crossings of a grid; a cell whose mean is above zero is cut, else fill.
   *
   * @param depths at the crossings, row by row, fill negative
   * @param columns crossings in a row; divides their number
   */
  public static Moved grid(List<Length> depths, int columns, Area cell) {
    Volume cut = Volume.ZERO;
    Volume fill = Volume.ZERO;
    for (int i = 0; i + columns + 1 < depths.size(); i++) {
      if (i % columns < columns - 1) {
        List<Length> corners = new ArrayList<>(depths.subList(i, i + 2));
        corners.addAll(depths.subList(i + columns, i + columns + 2));
        Volume volume = gridCell(corners, cell);
        boolean dug = volume.cubicMetres() > 0;
        cut = dug ? cut.plus(volume) : cut;
        fill = dug ? fill : fill.minus(volume);
      }
    }
    return new Moved(cut, fill);
  }
}
