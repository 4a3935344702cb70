package yardloom.work.haul;

import java.util.ArrayList;
import java.util.List;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * The shortest way of a barrow round what stands in its way.
 *
 * <p>The ways that bend only at corners of the obstacles, each grown by a barrow's half width,
 * contain the shortest. An end nearer to an obstacle than that half width, such as the middle of a
 * narrow bed along a fence, is reached from the nearest free place. Ends that are closed in are
 * joined by the straight line.
 *
 * <p>References: [1] T. Lozano-Pérez, M. A. Wesley, An algorithm for planning collision-free paths
 * among polyhedral obstacles, Communications of the ACM 22, 1979, pp. 560-570 (visibility graph).
 */
public final class BarrowWay {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.memory(
          "Planning collision-free paths among polyhedral obstacles (visibility graph)",
          "T. Lozano-Pérez and M. A. Wesley, Communications of the ACM 22",
          1979,
          "pp. 560-570");

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final Length HALF_BARROW = Length.metres(0.4);
  // Bends stand a hair off the obstacle, so that walking along a wall does not count as crossing.
  private static final Length HAIR = Length.metres(0.005);

  private final PreparedGeometry blocked;

  /** A hair outside of what is blocked. */
  private final Geometry edge;

  private final List<Coordinate> bends = new ArrayList<>();

  /** Prepares the obstacles, such as buildings and structures. */
  public BarrowWay(List<Shape> obstacles) {
    Shape grown = Shape.union(obstacles).grown(HALF_BARROW);
    blocked = PreparedGeometryFactory.prepare(grown.jts());
    Shape around = Shape.union(obstacles).grown(HALF_BARROW.plus(HAIR));
    edge = around.jts().getBoundary();
    for (Shape part : around.parts()) {
      for (Coordinate c : part.jts().convexHull().getCoordinates()) {
        bends.add(c);
      }
      for (Coordinate c : part.jts().getCoordinates()) {
        bends.add(c);
      }
    }
  }

  public Line between(Point from, Point to) {
    Coordinate a = free(from.coordinate());
    Coordinate b = free(to.coordinate());
    if (from.equals(to) || isFree(from.coordinate(), to.coordinate())) {
      return straight(from, to);
    }
    if (a.equals2D(b)) {
      return joined(from, List.of(a), to);
    }
    SimpleWeightedGraph<Coordinate, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    List<Coordinate> stops = new ArrayList<>();
    for (Coordinate c : bends) {
      if (graph.addVertex(c)) {
        stops.add(c);
      }
    }
    for (Coordinate c : List.of(a, b)) {
      if (graph.addVertex(c)) {
        stops.add(c);
      }
    }
    for (int i = 0; i < stops.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (isFree(stops.get(i), stops.get(j))) {
          DefaultWeightedEdge edge = graph.addEdge(stops.get(i), stops.get(j));
          graph.setEdgeWeight(edge, stops.get(i).distance(stops.get(j)));
        }
      }
    }
    GraphPath<Coordinate, DefaultWeightedEdge> path =
        DijkstraShortestPath.findPathBetween(graph, a, b);
    if (path == null) {
      return straight(from, to);
    }
    return joined(from, path.getVertexList(), to);
  }

  private static Line joined(Point from, List<Coordinate> between, Point to) {
    List<Point> points = new ArrayList<>();
    points.add(from);
    between.forEach(c -> points.add(Point.metres(c.x, c.y)));
    points.add(to);
    return Line.through(points);
  }

  /** The place itself, or the nearest one that a barrow can stand on. */
  private Coordinate free(Coordinate at) {
    Geometry place = FACTORY.createPoint(at);
    return blocked.intersects(place) ? DistanceOp.nearestPoints(edge, place)[0] : at;
  }

  private static Line straight(Point from, Point to) {
    Point end = from.equals(to) ? to.moved(HAIR, Length.ZERO) : to;
    return Line.between(from, end);
  }

  private boolean isFree(Coordinate a, Coordinate b) {
    Geometry walk = FACTORY.createLineString(new Coordinate[] {a, b});
    return !blocked.intersects(walk);
  }
}
