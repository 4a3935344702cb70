package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.linearref.LengthIndexedLine;
import yardloom.kernel.unit.Length;

/**
 * Lines that run inside a shape along its outer boundary, at even distances from it and from each
 * other: how rows run in round and curved beds.
 *
 * <p>In a shape with holes they go once round, from the outside to the hole; in one without they
 * fill it from all sides to its middle. Their spacing is the depth of the shape divided by the
 * whole number of rows that comes nearest to what is wished, one at least.
 */
public final class Loops {
  private static final double FINE_M = 1e-3;

  /** A bend between straight sides turns more. */
  private static final double GENTLE_RAD = Math.toRadians(20);

  private Loops() {}

  /** Whether the bends of the outer boundary that are too gentle for corners make half a turn. */
  public static boolean isCurved(Shape part) {
    double turned = 0;
    for (Polygon polygon : part.polygons()) {
      Coordinate[] c = polygon.getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < c.length; i++) {
        Coordinate before = c[i == 0 ? c.length - 2 : i - 1];
        double from = StrictMath.atan2(c[i].y - before.y, c[i].x - before.x);
        double to = StrictMath.atan2(c[i + 1].y - c[i].y, c[i + 1].x - c[i].x);
        double turn = Math.abs(Math.IEEEremainder(to - from, 2 * Math.PI));
        turned += turn < GENTLE_RAD ? turn : 0;
      }
    }
    return turned >= Math.PI * (1 - 1e-6);
  }

  /**
   * The lines, the outermost first; closed where they meet themselves.
   *
   * @param part a shape in one part
   * @throws IllegalArgumentException if the spacing is not positive or the shape not in one part
   */
  public static List<Line> of(Shape part, Length spacing) {
    if (spacing.metres() <= 0 || part.polygons().size() != 1) {
      throw new IllegalArgumentException("loops need a positive spacing and a shape in one part");
    }
    Polygon polygon = part.polygons().get(0);
    boolean hasHole = polygon.getNumInteriorRing() > 0;
    double insideM = part.inside().metres();
    double depthM = hasHole ? 2 * insideM : insideM;
    double count = Math.max(1, Math.floor(depthM / spacing.metres() + 0.5 + 1e-6));
    Shape filled = Shape.of(Overlay.FACTORY.createPolygon(polygon.getExteriorRing()));
    List<Line> loops = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (Polygon inner : filled.shrunk(Length.metres((i + 0.5) * depthM / count)).polygons()) {
        loops.addAll(clipped(polygon, inner.getExteriorRing(), hasHole));
      }
    }
    return List.copyOf(loops);
  }

  private static List<Line> clipped(Polygon within, LineString loop, boolean hasHole) {
    if (!hasHole) {
      return List.of(new Line(loop));
    }
    Geometry inside = Overlay.lineInside(within, loop);
    if (inside.getLength() > loop.getLength() - FINE_M) {
      return List.of(new Line(loop));
    }
    return Overlay.merged(inside).stream()
        .filter(piece -> piece.length().metres() > FINE_M)
        .toList();
  }

  /** The same closed line begun where it comes nearest to {@code to}; an open one as it is. */
  public static Line startingNear(Line loop, Point to) {
    if (!loop.isClosed()) {
      return loop;
    }
    LengthIndexedLine index = new LengthIndexedLine(loop.jts());
    double at = index.project(to.coordinate());
    double end = index.getEndIndex();
    List<Point> points = new ArrayList<>();
    double[][] pieces = {{at, end}, {0, at}};
    for (double[] piece : pieces) {
      if (piece[1] - piece[0] > 1e-6) {
        for (Coordinate c : index.extractLine(piece[0], piece[1]).getCoordinates()) {
          Point p = Point.of(c);
          if (points.isEmpty() || points.get(points.size() - 1).distance(p).metres() > 1e-6) {
            points.add(p);
          }
        }
      }
    }
    points.set(points.size() - 1, points.get(0));
    return Line.through(points);
  }
}
