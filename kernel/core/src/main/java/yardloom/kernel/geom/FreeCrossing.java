package yardloom.kernel.geom;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import yardloom.kernel.unit.Length;

/** A surface that may be crossed anywhere: straight, or round the corners that reach into it. */
final class FreeCrossing {
  private final PreparedGeometry room;
  private final List<Coordinate> corners;

  /**
   * @param slack how far beside the ground still counts as on it
   */
  FreeCrossing(Shape ground, Length slack) {
    room = PreparedGeometryFactory.prepare(ground.grown(slack).jts());
    Set<Coordinate> outer = Set.of();
    Coordinate[] all = ground.jts().getCoordinates();
    if (all.length > 0) {
      outer = Arrays.stream(ground.jts().convexHull().getCoordinates()).collect(Collectors.toSet());
    }
    Set<Coordinate> hull = outer;
    corners = Arrays.stream(all).filter(c -> !hull.contains(c)).distinct().toList();
  }

  /** The corners that a shortest way may turn at; none where the ground is convex. */
  List<Coordinate> corners() {
    return corners;
  }

  /** Whether the straight line between two places on the ground stays on it. */
  boolean isClear(Coordinate a, Coordinate b) {
    Geometry line = Overlay.FACTORY.createLineString(new Coordinate[] {a, b});
    return corners.isEmpty() || room.covers(line);
  }

  boolean contains(Coordinate at) {
    return room.covers(Overlay.FACTORY.createPoint(at));
  }
}
