package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * The part of a shape that is at least a distance from its boundary, holes included.
 *
 * <p>Returned in parts, from left to right; none if the shape is too narrow. Corners stay sharp
 * where the outline is convex and turn round where it is reflex, within half a millimetre. Each
 * result is held to its postconditions: valid, inside, nowhere nearer than the distance less 1 mm,
 * no larger than the shape, and no ground lost that is far enough inside. Should the buffer fail
 * them, the same ground is found by subtracting all ground near each edge; should that fail too,
 * the outline is named for a report. Buffers with mitred corners are not used for insets: JTS
 * issues 180 and 1180 and GEOS issues 1047, 1211 and 1403 show them invalid or losing ground.
 */
public final class Inset {
  static final double TOLERANCE_M = 1e-3;

  private Inset() {}

  /**
   * The ground at least {@code distance} inside.
   *
   * @throws PlanException (OUT_OF_RANGE) if the distance is negative
   */
  public static List<Shape> of(Shape shape, Length distance) {
    if (distance.metres() < 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "an inset cannot be negative, got " + distance);
    }
    if (distance.metres() == 0 || shape.isEmpty()) {
      return shape.parts();
    }
    Shape inset = new Shape(Overlay.fineBuffer(shape.jts(), -distance.metres()));
    Optional<String> breach = breach(shape, inset, distance);
    if (breach.isPresent()) {
      inset = byEdges(shape, distance);
      breach = breach(shape, inset, distance);
    }
    if (breach.isPresent()) {
      throw Postconditions.broken("inset by " + distance, breach.get(), shape);
    }
    return inset.parts();
  }

  private static Optional<String> breach(Shape shape, Shape inset, Length distance) {
    if (losesGround(shape, inset, distance)) {
      return Optional.of("loses ground that is far enough inside");
    }
    if (inset.isEmpty()) {
      return Optional.empty();
    }
    if (!inset.jts().isValid()) {
      return Optional.of("is not a valid shape");
    }
    IndexedFacetDistance to = new IndexedFacetDistance(inset.jts());
    for (Polygon polygon : shape.polygons()) {
      for (LineString ring : rings(polygon)) {
        double gotM = to.distance(ring);
        if (gotM < distance.metres() - TOLERANCE_M) {
          return Optional.of("comes as near as " + gotM + " m");
        }
      }
    }
    return inset.area().compareTo(shape.area()) <= 0 && shape.covers(inset)
        ? Optional.empty()
        : Optional.of("reaches outside");
  }

  /**
   * Whether ground is missing: the strip along the boundary takes at most its length times the
   * distance and a sector at each reflex corner, and the middle of the largest circle that fits
   * stays as long as its radius exceeds the distance. The library was seen to return nothing for
   * plain rectangles (JTS issues 908 and 1143).
   */
  private static boolean losesGround(Shape shape, Shape inset, Length distance) {
    double d = distance.metres();
    double mostM2 =
        shape.perimeter().metres() * d + reflexTurn(shape) * d * d / 2 + TOLERANCE_M * d;
    if (inset.area().squareMetres() < shape.area().squareMetres() - mostM2) {
      return true;
    }
    for (Shape part : shape.parts()) {
      Point heart = part.heart();
      double radiusM = Overlay.depthInside(part.jts(), heart.coordinate());
      if (radiusM > d * (1 + 1e-6) + TOLERANCE_M && !inset.contains(heart)) {
        return true;
      }
    }
    return false;
  }

  /** How much the boundary turns at its reflex corners, in radians. */
  private static double reflexTurn(Shape shape) {
    double sum = 0;
    for (Polygon polygon : shape.polygons()) {
      for (LineString ring : rings(polygon)) {
        boolean hole = ring != polygon.getExteriorRing();
        boolean ccw = Orientation.isCCW(ring.getCoordinates());
        Coordinate[] c = (ccw == hole ? ring.reverse() : ring).getCoordinates();
        for (int i = 0; i + 1 < c.length; i++) {
          Coordinate before = c[i == 0 ? c.length - 2 : i - 1];
          double from = StrictMath.atan2(c[i].y - before.y, c[i].x - before.x);
          double to = StrictMath.atan2(c[i + 1].y - c[i].y, c[i + 1].x - c[i].x);
          sum += Math.max(0, -Math.IEEEremainder(to - from, 2 * Math.PI));
        }
      }
    }
    return sum;
  }

  /** The slow way, edge by edge; also the second opinion that tests compare with. */
  static Shape byEdges(Shape shape, Length distance) {
    List<Geometry> near = new ArrayList<>();
    for (Polygon polygon : shape.polygons()) {
      for (LinearRing ring : rings(polygon)) {
        near.addAll(Around.pieces(ring, distance.metres()));
      }
    }
    return new Shape(Overlay.difference(shape.jts(), Overlay.unionAll(near)));
  }

  static List<LinearRing> rings(Polygon polygon) {
    List<LinearRing> rings = new ArrayList<>();
    rings.add(polygon.getExteriorRing());
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      rings.add(polygon.getInteriorRingN(i));
    }
    return rings;
  }
}
