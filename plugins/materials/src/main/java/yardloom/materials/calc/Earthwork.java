package yardloom.materials.calc;

import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Volumes of cut and fill.
 *
 * <p>Average end area L(A₁ + A₂)/2 overestimates tapering bodies; the prismoidal rule L(A₁ + 4 Aₘ +
 * A₂)/6 is exact for them; a pyramid L·A/3 where one end is zero. Grid cells take the mean of four
 * corner depths; triangles the mean of three, exact for planes. Mismatched lists or falling
 * stations are CONTRADICTION.
 *
 * <p>References: [1] Wikibooks, Fundamentals of Transportation, Earthwork. [2] G. Vose, Handbook of
 * Railroad Construction, 1857, §108.
 */
public final class Earthwork {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read("Handbook of Railroad Construction", "G. Vose", 1857, "§108");

  private Earthwork() {}

  public static Volume endArea(Area a, Area b, Length apart) {
    return a.plus(b).times(0.5).deep(apart);
  }

  public static Volume pyramid(Area base, Length apart) {
    return base.deep(apart).div(3);
  }

  public static Volume prismoid(Area a, Area middle, Area b, Length apart) {
    return a.plus(middle.times(4)).plus(b).deep(apart).div(6);
  }

  /**
   * Sums end areas along stations; where exactly one end is zero, as a pyramid if asked.
   *
   * @param pyramidAtZero whether a body that runs out to nothing counts as a pyramid
   */
  public static Volume along(List<Length> stations, List<Area> sections, boolean pyramidAtZero) {
    if (stations.size() != sections.size()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          stations.size() + " stations, but " + sections.size() + " sections; give one for each");
    }
    Volume sum = Volume.ZERO;
    for (int i = 1; i < stations.size(); i++) {
      Length apart = stations.get(i).minus(stations.get(i - 1));
      if (apart.metres() < 0) {
        throw new PlanException(ProblemCode.CONTRADICTION, "stations must rise");
      }
      Area a = sections.get(i - 1);
      Area b = sections.get(i);
      boolean runsOut = (a.si() == 0) != (b.si() == 0);
      sum = sum.plus(pyramidAtZero && runsOut ? pyramid(a.max(b), apart) : endArea(a, b, apart));
    }
    return sum;
  }

  /** The mean of the four corner depths over one cell; cut positive, fill negative. */
  public static Volume cell(Area cell, Length a, Length b, Length c, Length d) {
    return cell.deep(a.plus(b).plus(c).plus(d).div(4));
  }

  /**
   * A triangle of ground under three corner depths.
   *
   * @param corners three points
   * @param depths depth at each
   */
  public static Volume triangle(List<Point> corners, List<Length> depths) {
    if (corners.size() != 3 || depths.size() != 3) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, "a triangle has three corners and three depths");
    }
    double ax = corners.get(1).x().metres() - corners.get(0).x().metres();
    double ay = corners.get(1).y().metres() - corners.get(0).y().metres();
    double bx = corners.get(2).x().metres() - corners.get(0).x().metres();
    double by = corners.get(2).y().metres() - corners.get(0).y().metres();
    Length mean = depths.get(0).plus(depths.get(1)).plus(depths.get(2)).div(3);
    return Area.squareMetres(Math.abs(ax * by - ay * bx) / 2).deep(mean);
  }
}
