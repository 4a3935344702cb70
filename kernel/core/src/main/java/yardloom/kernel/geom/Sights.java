package yardloom.kernel.geom;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.noding.BasicSegmentString;
import org.locationtech.jts.noding.FastSegmentSetIntersectionFinder;
import org.locationtech.jts.noding.SegmentIntersectionDetector;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.SegmentStringUtil;
import yardloom.kernel.unit.Length;

/**
 * What of a surface can be seen from where. The networks from all starts, with a barrow and on
 * foot, ask for much the same, so that each answer is found once.
 */
final class Sights {
  private final PreparedGeometry room;
  private final FastSegmentSetIntersectionFinder edges;
  private final boolean isOne;
  private final List<Coordinate> corners;

  /** The corners before and after each corner in its ring; none where rings meet. */
  private final Map<Coordinate, Coordinate[]> beside = new HashMap<>();

  private final Map<List<Coordinate>, Boolean> clear = new ConcurrentHashMap<>();
  private final Map<Coordinate, Boolean> inside = new ConcurrentHashMap<>();

  /** The sights of several grounds, each found out when it is first asked for. */
  static final class All {
    private final Map<Shape, Sights> known = new ConcurrentHashMap<>();

    /** Those of one, with so much beside it that still counts as on it. */
    Sights of(Shape ground, Length slack) {
      return known.computeIfAbsent(ground, g -> new Sights(g, slack));
    }
  }

  private Sights(Shape ground, Length slack) {
    Geometry wide = ground.grown(slack).jts();
    room = PreparedGeometryFactory.prepare(wide);
    edges = new FastSegmentSetIntersectionFinder(SegmentStringUtil.extractSegmentStrings(wide));
    isOne = wide.getNumGeometries() == 1;
    Set<Coordinate> outer = Set.of();
    Coordinate[] all = ground.jts().getCoordinates();
    if (all.length > 0) {
      outer = Arrays.stream(ground.jts().convexHull().getCoordinates()).collect(Collectors.toSet());
    }
    Set<Coordinate> hull = outer;
    corners = Arrays.stream(all).filter(c -> !hull.contains(c)).distinct().toList();
    LinearComponentExtracter.getLines(ground.jts())
        .forEach(ring -> neighbours(((Geometry) ring).getCoordinates()));
  }

  private void neighbours(Coordinate[] ring) {
    int n = ring.length - 1;
    for (int i = 0; i < n; i++) {
      Coordinate[] both = {ring[(i + n - 1) % n], ring[i + 1]};
      if (beside.put(ring[i], both) != null) {
        beside.put(ring[i], new Coordinate[0]);
      }
    }
  }

  /** The corners that a shortest way may turn at; none where the ground is convex. */
  List<Coordinate> corners() {
    return corners;
  }

  /** The corners beside each corner. */
  Map<Coordinate, Coordinate[]> beside() {
    return beside;
  }

  /**
   * Whether the straight line between two places on the ground stays on it. One that passes through
   * an edge leaves it, one that meets none stays; only where it touches an edge, or where parts of
   * the ground might touch, the library has to work out the whole relation, which takes it a
   * hundred times as long.
   */
  boolean isClear(Coordinate a, Coordinate b) {
    return corners.isEmpty() || clear.computeIfAbsent(List.of(a, b), ends -> found(a, b));
  }

  private boolean found(Coordinate a, Coordinate b) {
    Coordinate[] ends = {a, b};
    SegmentIntersectionDetector met = new SegmentIntersectionDetector();
    met.setFindProper(true);
    List<SegmentString> line = List.of(new BasicSegmentString(ends, null));
    if (isOne && !edges.intersects(line, met)) {
      return contains(a);
    }
    return !(isOne && met.hasProperIntersection())
        && room.covers(Overlay.FACTORY.createLineString(ends));
  }

  boolean contains(Coordinate at) {
    return inside.computeIfAbsent(at, c -> room.covers(Overlay.FACTORY.createPoint(c)));
  }
}
