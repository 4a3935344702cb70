package yardloom.kernel.geom;

import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.unit.Length;

/**
 * The radius of the largest circle inside a shape, to 1 mm.
 *
 * <p>The library halves cells until none could hold a larger circle. In round ground, such as a
 * crown with the bare ground about its trunk, every place of a ring is nearly the best, so that
 * this takes tens of thousands of cells. Two bounds know such ground at once:
 *
 * <ul>
 *   <li>a convex shape has at least half of the radius times its outline for an area, with equality
 *       where one circle touches all sides;
 *   <li>between a convex outline and a convex hole a line parts the circle from the hole, so that
 *       the circle is no wider than the corner farthest from the hole is away from it.
 * </ul>
 *
 * If a circle that fits comes within 1 mm of the bound it is returned, otherwise the search
 * decides.
 */
final class InnerCircle {
  private static final double TOLERANCE_M = 0.001;

  /** Of the area; hulls of circles in chords differ from them by rounding only. */
  private static final double CONVEX_WITHIN = 1e-9;

  private InnerCircle() {}

  static Length radius(Polygon polygon) {
    Geometry outer = Overlay.FACTORY.createPolygon(polygon.getExteriorRing());
    int holes = polygon.getNumInteriorRing();
    if (holes > 1 || !isConvex(outer)) {
      return Length.metres(searched(polygon));
    }
    double most;
    Coordinate middle;
    if (holes == 0) {
      most = 2 * polygon.getArea() / polygon.getLength();
      middle = polygon.getCentroid().getCoordinate();
    } else {
      Geometry hole = Overlay.FACTORY.createPolygon(polygon.getInteriorRingN(0));
      if (!isConvex(hole)) {
        return Length.metres(searched(polygon));
      }
      Coordinate[] across = farthest(outer, hole);
      most = across[0].distance(across[1]) / 2;
      middle = new Coordinate((across[0].x + across[1].x) / 2, (across[0].y + across[1].y) / 2);
    }
    double least = Overlay.depthInside(polygon, middle);
    return Length.metres(most - least <= TOLERANCE_M ? least : searched(polygon));
  }

  static double searched(Geometry geometry) {
    return MaximumInscribedCircle.getRadiusLine(geometry, TOLERANCE_M).getLength();
  }

  private static boolean isConvex(Geometry shape) {
    return shape.convexHull().getArea() - shape.getArea() <= CONVEX_WITHIN * shape.getArea();
  }

  /** The corner farthest from the hole, and the place of the hole nearest to it. */
  private static Coordinate[] farthest(Geometry outer, Geometry hole) {
    Coordinate[] best = {};
    for (Coordinate corner : outer.getCoordinates()) {
      Coordinate[] near = DistanceOp.nearestPoints(Overlay.FACTORY.createPoint(corner), hole);
      if (best.length == 0 || near[0].distance(near[1]) > best[0].distance(best[1])) {
        best = near;
      }
    }
    return best;
  }
}
