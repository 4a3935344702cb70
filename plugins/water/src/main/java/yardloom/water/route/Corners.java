package yardloom.water.route;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;

/** Points of an outline at which a line may bend: its corners, or some of them on a curve. */
final class Corners {
  private static final int MOST = 16;

  private Corners() {}

  static List<Point> of(Shape shape) {
    List<Point> corners = new ArrayList<>();
    for (Shape part : shape.parts()) {
      List<Point> all = part.corners();
      int step = (all.size() + MOST - 1) / MOST;
      for (int i = 0; i < all.size(); i += step) {
        corners.add(all.get(i));
      }
    }
    return corners;
  }
}
