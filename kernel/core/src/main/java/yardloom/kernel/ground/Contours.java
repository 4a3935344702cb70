package yardloom.kernel.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * Lines of equal level on a surface.
 *
 * <p>Tie rule: a corner exactly at the level counts as above it. A level that the surface only
 * touches from above at a corner is listed without a line. Contours never cross and end only at the
 * edge of the measured ground.
 *
 * <p>References: straight lines between levels, common practice of drawing contours by hand.
 */
public final class Contours {
  private static final int MOST = 500;
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** The lines of one level, from left to right; several where the ground has several slopes. */
  public record Contour(Length level, List<Line> lines) {
    public Contour {
      lines = List.copyOf(lines);
    }
  }

  private Contours() {}

  /**
   * The contours at {@code base} and every {@code interval} from it, lowest first.
   *
   * @throws PlanException (OUT_OF_RANGE) if the interval is not positive, or so small that there
   *     would be more than {@value #MOST}
   */
  public static List<Contour> of(Surface surface, Length interval, Length base) {
    if (interval.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a contour interval must be positive, got " + interval);
    }
    double slack = 1e-9;
    long first = (long) Math.ceil(surface.lowest().minus(base).ratioTo(interval) - slack);
    long last = (long) Math.floor(surface.highest().minus(base).ratioTo(interval) + slack);
    if (last - first > MOST) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "an interval of "
              + interval
              + " gives "
              + (last - first + 1)
              + " contours; make it larger");
    }
    List<Contour> contours = new ArrayList<>();
    for (long k = first; k <= last; k++) {
      Length level = base.plus(interval.times(k));
      contours.add(new Contour(level, lines(surface, level)));
    }
    return List.copyOf(contours);
  }

  private static List<Line> lines(Surface surface, Length level) {
    LineMerger merger = new LineMerger();
    for (Triangle t : surface.triangles()) {
      if (t.lowest().compareTo(level) < 0 && t.highest().compareTo(level) >= 0) {
        List<Coordinate> ends = new ArrayList<>();
        crossing(t.a(), t.b(), level, ends);
        crossing(t.b(), t.c(), level, ends);
        crossing(t.c(), t.a(), level, ends);
        if (ends.size() == 2 && ends.get(0).distance(ends.get(1)) > 1e-9) {
          merger.add(FACTORY.createLineString(ends.toArray(new Coordinate[0])));
        }
      }
    }
    TreeSet<LineString> sorted = new TreeSet<>();
    for (Object merged : merger.getMergedLineStrings()) {
      LineString line = (LineString) merged;
      line.normalize();
      sorted.add(line);
    }
    List<Line> lines = new ArrayList<>();
    for (LineString line : sorted) {
      List<Point> points = new ArrayList<>();
      for (Coordinate c : line.getCoordinates()) {
        points.add(Point.metres(c.x, c.y));
      }
      lines.add(Line.through(points));
    }
    return lines;
  }

  /** Adds where the edge crosses the level, the same for both triangles that share it. */
  private static void crossing(Spot a, Spot b, Length level, List<Coordinate> ends) {
    boolean aAbove = a.level().compareTo(level) >= 0;
    boolean bAbove = b.level().compareTo(level) >= 0;
    if (aAbove == bAbove) {
      return;
    }
    Spot low = aAbove ? b : a;
    Spot high = aAbove ? a : b;
    double share = level.minus(low.level()).ratioTo(high.level().minus(low.level()));
    double x = low.at().x().metres() + share * high.at().x().minus(low.at().x()).metres();
    double y = low.at().y().metres() + share * high.at().y().minus(low.at().y()).metres();
    ends.add(share >= 1 ? high.at().coordinate() : new Coordinate(x, y));
  }
}
