package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.unit.Length;

/**
 * The sides of an outline that is a rectangle, upright or turned; the longer one first.
 *
 * <p>An outline counts as a rectangle if it has four corners and its diagonals are equal and halve
 * each other, to a millimetre. Points along a straight side, such as the ends of a path's line, are
 * no corners. Anything else, holes included, has no sides.
 *
 * <p>References: Euclid, Elements, book I.
 */
public record RectangleSides(Length length, Length width) {
  private static final double TOLERANCE_M = 1e-3;

  public static Optional<RectangleSides> of(Shape shape) {
    if (shape.polygons().size() != 1 || shape.polygons().get(0).getNumInteriorRing() > 0) {
      return Optional.empty();
    }
    Coordinate[] c = corners(shape.jts().getCoordinates());
    if (c.length != 4) {
      return Optional.empty();
    }
    boolean halved =
        Math.hypot(c[0].x + c[2].x - c[1].x - c[3].x, c[0].y + c[2].y - c[1].y - c[3].y)
            < 2 * TOLERANCE_M;
    boolean equal = Math.abs(c[0].distance(c[2]) - c[1].distance(c[3])) < TOLERANCE_M;
    if (!halved || !equal) {
      return Optional.empty();
    }
    Length a = Length.metres(c[0].distance(c[1]));
    Length b = Length.metres(c[1].distance(c[2]));
    return Optional.of(new RectangleSides(a.max(b), a.min(b)));
  }

  /** Where a closed ring turns: the points off the line between the corner before and the next. */
  private static Coordinate[] corners(Coordinate[] ring) {
    int n = ring.length - 1;
    List<Coordinate> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Coordinate before = ring[(i + n - 1) % n];
      if (Distance.pointToSegment(ring[i], before, ring[i + 1]) > TOLERANCE_M) {
        corners.add(ring[i]);
      }
    }
    return corners.toArray(Coordinate[]::new);
  }
}
