package yardloom.site.annotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;

/**
 * Where to draw the distance between a building and a lot side: the shortest way, moved along the
 * nearest wall, if that is parallel, to where it crosses the fewest other things.
 */
final class WallToLine {
  private static final int STEPS = 48;

  /** Nearer than this, the measure written along the line would stand on the thing. */
  private static final double CLEAR_M = 0.4;

  /** As wide as a measure at the small scales of a lot: nearer than this it may reach the thing. */
  private static final double ROOMY_M = 1.2;

  private static final double EQUAL_M = 0.01;

  private WallToLine() {}

  /**
   * From the building to the side.
   *
   * @param others what the line had better keep clear of
   * @param passable what it may run across if it must
   * @param lines what it had better not run along
   */
  static Line between(
      Shape building,
      Line side,
      List<Geometry> others,
      List<Geometry> passable,
      List<Geometry> lines) {
    Coordinate[] nearest = DistanceOp.nearestPoints(building.jts(), side.jts());
    List<Coordinate[]> ways = new ArrayList<>();
    LineSegment edge = new LineSegment(side.start().coordinate(), side.end().coordinate());
    double shortest = nearest[0].distance(nearest[1]);
    for (Polygon polygon : building.polygons()) {
      Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
      for (int i = 1; i < ring.length; i++) {
        alongWall(new LineSegment(ring[i - 1], ring[i]), edge, shortest, ways);
      }
    }
    ways.add(nearest);
    Coordinate[] best =
        ways.stream()
            .min(Comparator.comparingLong(way -> crossed(way, others, passable, lines)))
            .orElseThrow();
    return Line.between(Point.metres(best[0].x, best[0].y), Point.metres(best[1].x, best[1].y));
  }

  private static void alongWall(
      LineSegment wall, LineSegment edge, double shortest, List<Coordinate[]> ways) {
    if (edge.distance(wall.p0) > shortest + EQUAL_M
        || edge.distance(wall.p1) > shortest + EQUAL_M) {
      return;
    }
    // From the middle outwards, so that of equally free places the middle one is taken.
    for (int i = 0; i <= STEPS; i++) {
      double off = (i + 1) / 2 / (double) STEPS;
      Coordinate from = wall.pointAlong(i % 2 == 0 ? 0.5 - off : 0.5 + off);
      Coordinate to = edge.closestPoint(from);
      if (from.distance(to) <= shortest + EQUAL_M) {
        ways.add(new Coordinate[] {from, to});
      }
    }
  }

  private static long crossed(
      Coordinate[] way, List<Geometry> others, List<Geometry> passable, List<Geometry> lines) {
    Geometry line =
        Line.between(Point.metres(way[0].x, way[0].y), Point.metres(way[1].x, way[1].y)).jts();
    Envelope around = line.getEnvelopeInternal();
    long through = others.stream().filter(line::intersects).count();
    long near = 0;
    long close = 0;
    for (Geometry g : others) {
      // Most lie clearly further off, which their bounds tell.
      if (g.getEnvelopeInternal().distance(around) < ROOMY_M) {
        double away = g.distance(line);
        near += away < CLEAR_M ? 1 : 0;
        close += away < ROOMY_M ? 1 : 0;
      }
    }
    long across = passable.stream().filter(line::intersects).count();
    long along = lines.stream().filter(g -> isAlong(line, g)).count();
    return 100 * through + 50 * near + 30 * along + 10 * across + close;
  }

  /** Whether the middle of the way, where its measure stands, is close to the line. */
  static boolean isAlong(Geometry way, Geometry line) {
    return way.getCentroid().distance(line) < CLEAR_M;
  }
}
