package yardloom.site.annotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.site.annotation.LotDistances.Distance;

/**
 * The distance from a building to a lot side as a dimension beside the lot, where the way itself is
 * full of beds and paths: an extension line leaves the building's corner, and the measure stands
 * outside the measure of the lot.
 */
final class OutsideChain {
  private static final double EQUAL_M = 0.01;

  private OutsideChain() {}

  private record Candidate(Distance chain, long crossed, int row, double extensionM) {
    Candidate ofRow(int other) {
      return new Candidate(chain, crossed, other, extensionM);
    }
  }

  /**
   * The chain whose lines cross the fewest of {@code things}, of equals the one of the earliest of
   * {@code beyondM}, of these the one with the shortest extension line; empty if every one crosses
   * as many as {@code most} or more. To run along the edge of a thing is not to cross it.
   *
   * @param beyondM how far outside the lot the dimension line may run, preferred first
   */
  static Optional<Distance> of(
      Shape building, Line side, Shape lot, List<Geometry> things, double[] beyondM, long most) {
    LineSegment edge = new LineSegment(side.start().coordinate(), side.end().coordinate());
    double shortest = building.jts().distance(side.jts());
    List<Candidate> candidates = new ArrayList<>();
    for (Polygon polygon : building.polygons()) {
      for (Coordinate corner : polygon.getExteriorRing().getCoordinates()) {
        Coordinate foot = edge.closestPoint(corner);
        if (corner.distance(foot) <= shortest + EQUAL_M) {
          for (int i = 0; i < beyondM.length; i++) {
            candidates.add(candidate(corner, foot, lot, things, beyondM[i], 1).ofRow(i));
            candidates.add(candidate(corner, foot, lot, things, beyondM[i], -1).ofRow(i));
          }
        }
      }
    }
    return candidates.stream()
        .filter(c -> c.crossed < most)
        .min(
            Comparator.comparingLong(Candidate::crossed)
                .thenComparingInt(Candidate::row)
                .thenComparingDouble(Candidate::extensionM))
        .map(Candidate::chain);
  }

  /**
   * @param hand 1 to the left of the way, -1 to its right
   */
  private static Candidate candidate(
      Coordinate corner,
      Coordinate foot,
      Shape lot,
      List<Geometry> things,
      double beyondM,
      int hand) {
    double lengthM = corner.distance(foot);
    double nx = -hand * (foot.y - corner.y) / lengthM;
    double ny = hand * (foot.x - corner.x) / lengthM;
    double reachM = 0;
    for (Coordinate c : lot.jts().getCoordinates()) {
      reachM = Math.max(reachM, (c.x - corner.x) * nx + (c.y - corner.y) * ny);
    }
    double offsetM = reachM + beyondM;
    Point from = Point.metres(corner.x, corner.y);
    Point to = Point.metres(foot.x, foot.y);
    Point lineFrom = Point.metres(corner.x + nx * offsetM, corner.y + ny * offsetM);
    Point lineTo = Point.metres(foot.x + nx * offsetM, foot.y + ny * offsetM);
    Geometry extension = Line.between(from, lineFrom).jts();
    Geometry measure = Line.between(lineFrom, lineTo).jts();
    long crossed =
        things.stream().filter(g -> runsThrough(extension, g) || runsThrough(measure, g)).count();
    return new Candidate(
        new Distance(from, to, Length.metres(hand * offsetM)), crossed, 0, offsetM);
  }

  private static boolean runsThrough(Geometry line, Geometry thing) {
    return line.intersects(thing) && !line.touches(thing);
  }
}
