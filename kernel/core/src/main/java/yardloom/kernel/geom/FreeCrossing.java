package yardloom.kernel.geom;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/** A surface that may be crossed anywhere: straight, or round the corners that reach into it. */
final class FreeCrossing {
  private final Sights sights;

  /** The corners before and after each corner in its ring; none where rings meet, or at a door. */
  private final Map<Coordinate, Coordinate[]> beside;

  FreeCrossing(Sights sights) {
    this.sights = sights;
    this.beside = new HashMap<>(sights.beside());
  }

  /** Ways begin and end at {@code door}, even where it is a corner that none would bend at. */
  void leaveAt(Coordinate door) {
    beside.put(door, new Coordinate[0]);
  }

  /**
   * Whether a shortest way may bend at {@code corner} on its way from or to {@code other}: only
   * where the corner's sides lie on one side of that line, so that the way goes round them.
   */
  boolean mayTurn(Coordinate corner, Coordinate other) {
    Coordinate[] both = beside.getOrDefault(corner, new Coordinate[0]);
    return both.length == 0
        || Orientation.index(other, corner, both[0]) * Orientation.index(other, corner, both[1])
            >= 0;
  }

  /** The corners that a shortest way may turn at; none where the ground is convex. */
  List<Coordinate> corners() {
    return sights.corners();
  }

  /** Whether the straight line between two places on the ground stays on it. */
  boolean isClear(Coordinate a, Coordinate b) {
    return sights.isClear(a, b);
  }

  boolean contains(Coordinate at) {
    return sights.contains(at);
  }
}
