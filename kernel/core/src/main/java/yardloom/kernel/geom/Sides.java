package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The sides of a shape by the plan's compass: north is up the plan, east to its right.
 *
 * <p>A side is the longest unbroken run of outer edges whose outward normals lie within 45° of the
 * direction (an edge at exactly 45° belongs to the direction clockwise of it), taken from the
 * largest part. The line runs so that the ground outside is on its left. Not every shape has every
 * side: a triangle may have none that faces north.
 */
public final class Sides {
  private static final double TIE = 1e-9;

  /** The four directions, in the order counter-clockwise from south. */
  public enum Compass {
    SOUTH(0, -1),
    EAST(1, 0),
    NORTH(0, 1),
    WEST(-1, 0);

    final double dx;
    final double dy;

    Compass(double dx, double dy) {
      this.dx = dx;
      this.dy = dy;
    }

    /** The direction that scripts call {@code word}. */
    public static Optional<Compass> named(String word) {
      return Arrays.stream(values()).filter(c -> c.word().equals(word)).findFirst();
    }

    /** {@code south}, as scripts write it. */
    public String word() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  private Sides() {}

  /** The side that faces {@code direction}, outside on its left; empty if no edge faces so. */
  public static Optional<Line> facing(Shape shape, Compass direction) {
    if (shape.isEmpty()) {
      return Optional.empty();
    }
    Coordinate[] ring = clockwiseRing(shape);
    int n = ring.length - 1;
    int start = firstNotFacing(ring, n, direction);
    List<Point> best = List.of();
    double bestLengthM = 0;
    List<Point> run = new ArrayList<>();
    double runLengthM = 0;
    for (int k = 0; k <= n; k++) {
      int i = (start + k) % n;
      if (k < n && faces(ring[i], ring[i + 1], direction)) {
        if (run.isEmpty()) {
          run.add(Point.of(ring[i]));
        }
        run.add(Point.of(ring[i + 1]));
        runLengthM += ring[i].distance(ring[i + 1]);
      } else {
        if (runLengthM > bestLengthM + TIE) {
          best = List.copyOf(run);
          bestLengthM = runLengthM;
        }
        run.clear();
        runLengthM = 0;
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(Line.through(best));
  }

  /**
   * For a counter-clockwise ring of four corners, which compass direction its first edge faces:
   * edge {@code i} then faces {@code Compass.values()[(first + i) % 4]}.
   */
  static int firstOfFour(List<Point> corners) {
    int best = 0;
    double bestFit = Double.NEGATIVE_INFINITY;
    for (int first = 0; first < 4; first++) {
      double fit = 0;
      for (int i = 0; i < 4; i++) {
        Coordinate a = corners.get(i).coordinate();
        Coordinate b = corners.get((i + 1) % 4).coordinate();
        Compass to = Compass.values()[(first + i) % 4];
        fit += ((b.y - a.y) * to.dx - (b.x - a.x) * to.dy) / a.distance(b);
      }
      // On a square standing on its corner two namings fit alike; the south side is then the one
      // further left, so that the corner the list starts with decides nothing.
      if (fit > bestFit + TIE
          || (fit > bestFit - TIE && southX(corners, first) < southX(corners, best))) {
        best = first;
        bestFit = fit;
      }
    }
    return best;
  }

  /** The names of the sides of a four-cornered ring, counter-clockwise from its first edge. */
  public static List<String> namesOfFour(List<Point> corners) {
    int first = firstOfFour(corners);
    List<String> names = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      names.add(Compass.values()[(first + i) % 4].word());
    }
    return List.copyOf(names);
  }

  private static double southX(List<Point> corners, int first) {
    int south = (4 - first) % 4;
    return corners.get(south).x().metres() + corners.get((south + 1) % 4).x().metres();
  }

  private static int firstNotFacing(Coordinate[] ring, int n, Compass direction) {
    for (int i = 0; i < n; i++) {
      if (!faces(ring[i], ring[i + 1], direction)) {
        return i;
      }
    }
    return 0;
  }

  private static boolean faces(Coordinate a, Coordinate b, Compass to) {
    double lengthM = a.distance(b);
    // The outward normal lies to the left of a clockwise edge.
    double nx = -(b.y - a.y) / lengthM;
    double ny = (b.x - a.x) / lengthM;
    double along = nx * to.dx + ny * to.dy;
    double clockwise = nx * to.dy - ny * to.dx;
    return along > 0 && clockwise > -along - TIE && clockwise < along - TIE;
  }

  private static Coordinate[] clockwiseRing(Shape shape) {
    Polygon largest = shape.polygons().get(0);
    for (Polygon polygon : shape.polygons()) {
      if (polygon.getArea() > largest.getArea() + Overlay.SLIVER_M2) {
        largest = polygon;
      }
    }
    Coordinate[] ring = largest.getExteriorRing().getCoordinates();
    if (Orientation.isCCW(ring)) {
      org.locationtech.jts.geom.CoordinateArrays.reverse(ring);
    }
    return ring;
  }
}
