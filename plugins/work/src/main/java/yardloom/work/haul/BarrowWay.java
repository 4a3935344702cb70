package yardloom.work.haul;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.GraphPath;
import org.jgrapht.Graphs;
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
 * The shortest way of a barrow round what stands in its way: round walls always, round beds but for
 * those at its two ends.
 *
 * <p>The ways that bend only at corners of the obstacles, each grown by a barrow's half width,
 * contain the shortest. An end nearer to an obstacle than that half width, such as the middle of a
 * narrow bed along a fence, is reached from the nearest free place.
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

  private final List<Shape> walls;
  private final List<Shape> beds;
  private final PreparedGeometry blocked;
  private final List<Coordinate> bends = new ArrayList<>();
  private Optional<SimpleWeightedGraph<Coordinate, DefaultWeightedEdge>> between = Optional.empty();

  /** Prepares the obstacles, such as buildings and structures. */
  public BarrowWay(List<Shape> walls) {
    this(walls, List.of());
  }

  /** Prepares walls, and beds, over which nobody wheels to somewhere else. */
  public BarrowWay(List<Shape> walls, List<Shape> beds) {
    this.walls = List.copyOf(walls);
    this.beds = List.copyOf(beds);
    blocked = blockedBy(beds);
    List<Shape> all = new ArrayList<>(walls);
    all.addAll(beds);
    Shape around = Shape.union(all).grownWithCorners(HALF_BARROW.plus(HAIR));
    Set<Coordinate> corners = new LinkedHashSet<>();
    around.parts().forEach(part -> corners.addAll(List.of(part.jts().getCoordinates())));
    bends.addAll(corners);
  }

  private PreparedGeometry blockedBy(List<Shape> some) {
    List<Shape> all = new ArrayList<>(walls);
    all.addAll(some);
    return PreparedGeometryFactory.prepare(Shape.union(all).grownWithCorners(HALF_BARROW).jts());
  }

  /** The shortest way, or where the ends are closed in the straight line. */
  public Line between(Point from, Point to) {
    return find(from, to).orElseGet(() -> straight(from, to));
  }

  /** The shortest way; empty where an end is closed in. */
  public Optional<Line> find(Point from, Point to) {
    List<Shape> others = beds.stream().filter(b -> !b.contains(from) && !b.contains(to)).toList();
    PreparedGeometry own = others.size() == beds.size() ? blocked : blockedBy(others);
    if (from.equals(to) || isFree(own, from.coordinate(), to.coordinate())) {
      return Optional.of(straight(from, to));
    }
    Coordinate a = free(own, from.coordinate());
    Coordinate b = free(own, to.coordinate());
    return a.equals2D(b)
        ? Optional.of(joined(from, List.of(a), to))
        : shortest(own, a, b).map(stops -> joined(from, stops, to));
  }

  private Optional<List<Coordinate>> shortest(PreparedGeometry own, Coordinate a, Coordinate b) {
    SimpleWeightedGraph<Coordinate, DefaultWeightedEdge> graph = graph();
    List<Coordinate> ends = new ArrayList<>();
    for (Coordinate end : List.of(a, b)) {
      if (graph.addVertex(end)) {
        ends.add(end);
      }
    }
    for (Coordinate end : ends) {
      for (Coordinate stop : List.copyOf(graph.vertexSet())) {
        if (!stop.equals2D(end) && isFree(own, stop, end)) {
          Graphs.addEdge(graph, stop, end, stop.distance(end));
        }
      }
    }
    GraphPath<Coordinate, DefaultWeightedEdge> path =
        DijkstraShortestPath.findPathBetween(graph, a, b);
    graph.removeAllVertices(ends);
    return Optional.ofNullable(path).map(GraphPath::getVertexList);
  }

  /** What the ways of all goals have in common, worked out once. */
  private SimpleWeightedGraph<Coordinate, DefaultWeightedEdge> graph() {
    if (between.isEmpty()) {
      SimpleWeightedGraph<Coordinate, DefaultWeightedEdge> graph =
          new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
      bends.forEach(graph::addVertex);
      for (int i = 0; i < bends.size(); i++) {
        for (int j = 0; j < i; j++) {
          if (isFree(blocked, bends.get(i), bends.get(j))) {
            Graphs.addEdge(graph, bends.get(i), bends.get(j), bends.get(i).distance(bends.get(j)));
          }
        }
      }
      between = Optional.of(graph);
    }
    return between.get();
  }

  private static Line joined(Point from, List<Coordinate> between, Point to) {
    List<Point> points = new ArrayList<>();
    points.add(from);
    between.forEach(c -> points.add(Point.metres(c.x, c.y)));
    points.add(to);
    return Line.through(points);
  }

  /** The place itself, or the nearest one that a barrow can stand on. */
  private static Coordinate free(PreparedGeometry own, Coordinate at) {
    Geometry place = FACTORY.createPoint(at);
    if (!own.intersects(place)) {
      return at;
    }
    Geometry edge = Shape.of(own.getGeometry()).grownWithCorners(HAIR).jts().getBoundary();
    return DistanceOp.nearestPoints(edge, place)[0];
  }

  private static Line straight(Point from, Point to) {
    Point end = from.equals(to) ? to.moved(HAIR, Length.ZERO) : to;
    return Line.between(from, end);
  }

  private static boolean isFree(PreparedGeometry own, Coordinate a, Coordinate b) {
    return !own.intersects(FACTORY.createLineString(new Coordinate[] {a, b}));
  }
}
