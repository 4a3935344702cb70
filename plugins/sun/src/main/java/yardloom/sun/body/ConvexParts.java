package yardloom.sun.body;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateArrays;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import yardloom.kernel.geom.Shape;

/**
 * Cuts a shape into convex polygons that cover it without overlap.
 *
 * <p>A convex polygon stays whole. Others are triangulated and triangles merged across shared edges
 * as long as the result stays convex. Returns corner rings, counter-clockwise, without the repeated
 * first corner.
 *
 * <p>References: [1] S. Hertel, K. Mehlhorn, Fast triangulation of simple polygons, FCT 1983, LNCS
 * 158 (at most four times the least number of parts; from memory).
 */
final class ConvexParts {
  private static final double STRAIGHT = 1e-12;

  private ConvexParts() {}

  static List<Coordinate[]> of(Shape shape) {
    List<Coordinate[]> parts = new ArrayList<>();
    for (Polygon polygon : shape.polygons()) {
      Coordinate[] ring = open(polygon.getExteriorRing().getCoordinates());
      if (polygon.getNumInteriorRing() == 0 && isConvex(ring)) {
        parts.add(ring);
      } else {
        parts.addAll(merged(polygon));
      }
    }
    return parts;
  }

  private static List<Coordinate[]> merged(Polygon polygon) {
    Geometry triangles = PolygonTriangulator.triangulate(polygon);
    List<Coordinate[]> parts = new ArrayList<>();
    for (int i = 0; i < triangles.getNumGeometries(); i++) {
      parts.add(open(triangles.getGeometryN(i).getCoordinates()));
    }
    for (int i = 0; i < parts.size(); i++) {
      for (int k = i + 1; k < parts.size(); k++) {
        Coordinate[] both = join(parts.get(i), parts.get(k));
        if (both != null) {
          parts.set(i, both);
          parts.remove(k);
          k = i;
        }
      }
    }
    return parts;
  }

  /** The two rings as one convex ring if they share an edge and that is possible, else null. */
  private static Coordinate[] join(Coordinate[] a, Coordinate[] b) {
    for (int i = 0; i < a.length; i++) {
      Coordinate from = a[i];
      Coordinate to = a[(i + 1) % a.length];
      for (int k = 0; k < b.length; k++) {
        if (b[k].equals2D(to) && b[(k + 1) % b.length].equals2D(from)) {
          Coordinate[] both = new Coordinate[a.length + b.length - 2];
          int n = 0;
          for (int s = 0; s < a.length; s++) {
            both[n++] = a[(i + 1 + s) % a.length];
          }
          for (int s = 2; s < b.length; s++) {
            both[n++] = b[(k + s) % b.length];
          }
          return isConvex(both) ? both : null;
        }
      }
    }
    return null;
  }

  static boolean isConvex(Coordinate[] ring) {
    for (int i = 0; i < ring.length; i++) {
      Coordinate a = ring[i];
      Coordinate b = ring[(i + 1) % ring.length];
      Coordinate c = ring[(i + 2) % ring.length];
      if ((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) < -STRAIGHT) {
        return false;
      }
    }
    return true;
  }

  /** The ring counter-clockwise and without its repeated end. */
  static Coordinate[] open(Coordinate[] closed) {
    Coordinate[] ring = CoordinateArrays.copyDeep(closed);
    if (!Orientation.isCCW(ring)) {
      CoordinateArrays.reverse(ring);
    }
    return java.util.Arrays.copyOf(ring, ring.length - 1);
  }
}
