package yardloom.kernel.geom;

import java.util.LinkedHashMap;
import java.util.Map;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Geometry;

/**
 * The middles of the largest circles in shapes: dear to find, and asked for again by each sheet,
 * and of each bed again whenever a plan is read anew. The latest are kept; what is kept is what
 * would be found, so nobody can tell.
 */
final class Hearts {
  private static final double WITHIN_M = 0.01;
  private static final int MOST_KEPT = 1500;

  private static final Map<Geometry, Point> KEPT =
      new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Geometry, Point> eldest) {
          return size() > MOST_KEPT;
        }
      };

  private Hearts() {}

  static Point of(Geometry area) {
    synchronized (KEPT) {
      Point known = KEPT.get(area);
      if (known != null) {
        return known;
      }
    }
    Point heart = Point.of(MaximumInscribedCircle.getCenter(area, WITHIN_M).getCoordinate());
    synchronized (KEPT) {
      KEPT.put(area, heart);
    }
    return heart;
  }
}
