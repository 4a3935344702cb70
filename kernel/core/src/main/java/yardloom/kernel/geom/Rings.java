package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * A shape as plain rows of corners and back, corner for corner: for writing shapes down.
 *
 * <p>A polygon is its outer ring followed by its holes; a ring does not repeat its first corner.
 */
public final class Rings {
  private Rings() {}

  /** The rings of each polygon of {@code shape}, from left to right; none if it is empty. */
  public static List<List<List<Point>>> of(Shape shape) {
    List<List<List<Point>>> all = new ArrayList<>();
    for (Polygon polygon : shape.polygons()) {
      List<List<Point>> rings = new ArrayList<>();
      rings.add(corners(polygon.getExteriorRing()));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        rings.add(corners(polygon.getInteriorRingN(i)));
      }
      all.add(List.copyOf(rings));
    }
    return List.copyOf(all);
  }

  private static List<Point> corners(LinearRing ring) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < ring.getNumPoints() - 1; i++) {
      corners.add(Point.of(ring.getCoordinateN(i)));
    }
    return List.copyOf(corners);
  }

  /**
   * The shape of these rings; the same that {@link #of} was asked of.
   *
   * @throws PlanException (BAD_SHAPE) if a ring has fewer than three corners or rings cross;
   *     (OUT_OF_RANGE) if a corner lies further out than {@link Outlines#FURTHEST_M}
   */
  public static Shape shape(List<List<List<Point>>> polygons) {
    Polygon[] made = new Polygon[polygons.size()];
    for (int i = 0; i < made.length; i++) {
      made[i] = polygon(polygons.get(i));
    }
    return Shape.of(made.length == 1 ? made[0] : require(Overlay.FACTORY.createMultiPolygon(made)));
  }

  private static Polygon polygon(List<List<Point>> rings) {
    if (rings.isEmpty()) {
      throw new PlanException(ProblemCode.BAD_SHAPE, "ground needs an outer ring of corners");
    }
    LinearRing outer = ring(rings.get(0));
    LinearRing[] holes = new LinearRing[rings.size() - 1];
    for (int i = 0; i < holes.length; i++) {
      holes[i] = ring(rings.get(i + 1));
    }
    return require(Overlay.FACTORY.createPolygon(outer, holes));
  }

  private static LinearRing ring(List<Point> corners) {
    if (corners.size() < 3) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "an outline needs at least three corners, got " + corners.size());
    }
    Polygon ring = Overlay.ring(corners);
    Outlines.requireExtent(ring);
    return ring.getExteriorRing();
  }

  private static <G extends org.locationtech.jts.geom.Geometry> G require(G made) {
    TopologyValidationError error = new IsValidOp(made).getValidationError();
    if (error != null) {
      Coordinate c = error.getCoordinate();
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "the outline crosses or touches itself near " + Coordinates.describe(c));
    }
    return made;
  }
}
