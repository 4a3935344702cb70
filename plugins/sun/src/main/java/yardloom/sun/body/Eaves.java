package yardloom.sun.body;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * The outline of eaves that stand out beyond walls.
 *
 * <p>Convex outlines keep their corners (each side moved out, neighbours meeting); others get round
 * corners. No overhang gives the walls' outline.
 *
 * <p>References: own construction.
 */
public final class Eaves {
  private Eaves() {}

  public static Shape of(Shape walls, Length overhang) {
    if (overhang.metres() <= 0 || walls.isEmpty()) {
      return walls;
    }
    List<Coordinate[]> parts = ConvexParts.of(walls);
    return parts.size() == 1
        ? Shape.polygon(movedOut(parts.get(0), overhang.metres()))
        : walls.grown(overhang);
  }

  private static List<Point> movedOut(Coordinate[] ring, double byM) {
    int n = ring.length;
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Coordinate before = ring[(i + n - 1) % n];
      Coordinate at = ring[i];
      Coordinate after = ring[(i + 1) % n];
      double in = before.distance(at);
      double out = at.distance(after);
      double inX = (at.x - before.x) / in;
      double inY = (at.y - before.y) / in;
      double outX = (after.x - at.x) / out;
      double outY = (after.y - at.y) / out;
      // The sum of both outward normals, as long as it takes to meet both moved sides.
      double reach = byM / (1 + inX * outX + inY * outY);
      corners.add(Point.metres(at.x + (inY + outY) * reach, at.y - (inX + outX) * reach));
    }
    return corners;
  }
}
