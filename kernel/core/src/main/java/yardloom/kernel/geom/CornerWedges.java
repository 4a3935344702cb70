package yardloom.kernel.geom;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The ground at a corner that belongs to a setback though it is further than the distance from both
 * sides: setback lines run on parallel to the lot lines until they meet.
 */
final class CornerWedges {
  private static final double STRAIGHT = 1e-9;

  /** Wedges that reach less than this beyond the round corner are not worth having. */
  private static final double TRIFLE_M = 2e-4;

  private CornerWedges() {}

  /**
   * Adds the wedges at the corner {@code v} between an edge from {@code a} with distance {@code d1}
   * and an edge to {@code b} with distance {@code d2}; the lot lies to the left of both.
   *
   * <p>Notation: t is the direction of an edge, n its normal to the left, m the point where the two
   * setback lines meet, seen from the corner.
   */
  static void add(
      Coordinate a, Coordinate v, Coordinate b, double d1, double d2, List<Geometry> pieces) {
    double l1 = a.distance(v);
    double l2 = v.distance(b);
    double t1x = (v.x - a.x) / l1;
    double t1y = (v.y - a.y) / l1;
    double t2x = (b.x - v.x) / l2;
    double t2y = (b.y - v.y) / l2;
    double sin = t1x * t2y - t1y * t2x;
    double cos = t1x * t2x + t1y * t2y;
    double largest = Math.max(d1, d2);
    if (Math.abs(sin) <= STRAIGHT || (d1 == d2 && d1 * (Math.sqrt(2 / (1 + cos)) - 1) < TRIFLE_M)) {
      return;
    }
    // How far along its own direction each setback line runs past the corner before they meet.
    double past1 = (d1 * cos - d2) / sin;
    double past2 = (d2 * cos - d1) / sin;
    if (sin > 0) {
      if (past1 > 0 && d1 > 0) {
        pieces.add(past(v, t1x, t1y, t2x, t2y, d1, Math.min(past1, Setbacks.LIMIT * d1)));
      }
      if (past2 > 0 && d2 > 0) {
        // The second edge seen in the mirror: its line runs on backwards.
        pieces.add(past(v, -t2x, -t2y, -t1x, -t1y, -d2, Math.min(past2, Setbacks.LIMIT * d2)));
      }
    } else if (past1 >= 0 && past2 >= 0 && Math.hypot(past1, d1) <= Setbacks.LIMIT * largest) {
      Coordinate m = new Coordinate(v.x + past1 * t1x - d1 * t1y, v.y + past1 * t1y + d1 * t1x);
      pieces.add(Quads.of(v, Quads.left(v, a, v, d1), m, Quads.left(v, v, b, d2)));
    }
  }

  /** The strip of one edge, run on past the corner and closed along the other edge. */
  private static Geometry past(
      Coordinate v, double tx, double ty, double ox, double oy, double d, double length) {
    Coordinate end = new Coordinate(v.x - d * ty, v.y + d * tx);
    Coordinate tip = new Coordinate(end.x + length * tx, end.y + length * ty);
    double foot = (tip.x - v.x) * ox + (tip.y - v.y) * oy;
    return Quads.of(v, end, tip, new Coordinate(v.x + foot * ox, v.y + foot * oy));
  }
}
