package yardloom.kernel.geom;

import java.util.Optional;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The small polygons that offsets are put together from. */
final class Quads {
  private Quads() {}

  /**
   * The convex quadrilateral with these corners. Rounding may have bent one of them inwards, so the
   * hull is taken; corners on one line give a geometry without area.
   */
  static Geometry of(Coordinate a, Coordinate b, Coordinate c, Coordinate d) {
    return new ConvexHull(new Coordinate[] {a, b, c, d}, Overlay.FACTORY).getConvexHull();
  }

  /** {@code at} moved by {@code distanceM} to the left of the direction from a to b. */
  static Coordinate left(Coordinate at, Coordinate a, Coordinate b, double distanceM) {
    double lengthM = a.distance(b);
    return new Coordinate(
        at.x - (b.y - a.y) / lengthM * distanceM, at.y + (b.x - a.x) / lengthM * distanceM);
  }

  /** Whether the way reverses on itself at {@code at}. */
  static boolean turnsBack(Coordinate before, Coordinate at, Coordinate after) {
    double ax = at.x - before.x;
    double ay = at.y - before.y;
    double bx = after.x - at.x;
    double by = after.y - at.y;
    return Math.abs(ax * by - ay * bx) <= 1e-12 * before.distance(at) * at.distance(after)
        && ax * bx + ay * by < 0;
  }

  /**
   * Where two offset edges meet: the edges run perpendicular to {@code at}–{@code first} and {@code
   * at}–{@code second}, which are equally long. Empty if that is further from {@code at} than
   * {@code limit} times their length.
   */
  static Optional<Coordinate> mitre(
      Coordinate at, Coordinate first, Coordinate second, double limit) {
    double sx = first.x + second.x - 2 * at.x;
    double sy = first.y + second.y - 2 * at.y;
    double reach2 = (first.x - at.x) * (first.x - at.x) + (first.y - at.y) * (first.y - at.y);
    double sum2 = sx * sx + sy * sy;
    // The tip lies on the bisector at reach / cos(half turn); |sum| = 2 reach cos(half turn).
    if (sum2 * limit * limit < 4 * reach2 || sum2 == 0) {
      return Optional.empty();
    }
    double scale = 2 * reach2 / sum2;
    return Optional.of(new Coordinate(at.x + sx * scale, at.y + sy * scale));
  }
}
