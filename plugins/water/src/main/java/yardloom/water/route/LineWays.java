package yardloom.water.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/**
 * The ways that pipe may take from the tap, as a graph of the corners of paths, beds, paving and
 * walls, joined straight where the ground allows it.
 *
 * <p>References: [1] E. W. Dijkstra, A note on two problems in connexion with graphs, 1959. [2] H.
 * Takahashi and A. Matsuyama, An approximate solution for the Steiner problem in graphs, 1980: the
 * tree grows by the nearest bed; it costs less than twice the least (from memory).
 */
public final class LineWays {
  /** The ways of a plan with a tap. */
  public static final FactKey<LineWays> KEY =
      FactKey.one("water.line-ways", LineWays.class).called("ways for pipe from the tap");

  /** Every corner is joined to so many of the nearest at most. */
  private static final int NEAREST = 60;

  private static final int TAP = 0;

  private static final Length FIRST_STEP = Length.metres(0.4);

  private final Point start;
  private final LineGround ground;
  private final List<Point> points = new ArrayList<>();
  private final SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
      new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
  private final SingleSourcePaths<Integer, DefaultWeightedEdge> fromTap;

  private LineWays(Point start, LineGround ground) {
    this.start = start;
    this.ground = ground;
    points.add(start);
    TreeSet<Point> bends = new TreeSet<>(ground.bends());
    Point last = null;
    for (Point bend : bends) {
      if (last == null || last.distance(bend).metres() > 0.01) {
        points.add(bend);
        last = bend;
      }
    }
    Optional<Point> off = ground.offWall(start).filter(this::isFirstStep);
    off.ifPresent(points::add);
    IntStream.range(0, points.size()).forEach(graph::addVertex);
    off.ifPresent(p -> join(TAP, points.size() - 1));
    for (int i = 0; i < points.size(); i++) {
      joinNearest(i);
    }
    fromTap = new DijkstraShortestPath<>(graph).getPaths(TAP);
  }

  /**
   * The ways from the tap of a plan that lies nearest to all that is watered, by the sum of
   * straight distances; empty without one.
   *
   * @param around feet of tanks and hollows of basins, which trenches go around
   */
  public static Optional<LineWays> fromTap(Plan plan, List<Shape> around, List<Shape> watered) {
    return tap(plan, watered).map(at -> new LineWays(at, LineGround.of(plan, around)));
  }

  /**
   * The ways from a tank that feeds the lines: from its rim, where the cheapest way from its middle
   * to anything that is watered leaves it.
   *
   * @param feet what the tank, or those linked in a row, stand on
   * @param around feet of other tanks and hollows of basins
   */
  public static LineWays fromTank(
      Plan plan, Point middle, List<Shape> feet, List<Shape> around, List<Shape> watered) {
    LineWays inner = new LineWays(middle, LineGround.of(plan, around));
    Point rim = inner.leaves(Shape.union(feet), watered);
    List<Shape> all = Stream.concat(feet.stream(), around.stream()).toList();
    return new LineWays(rim, LineGround.of(plan, all));
  }

  private Point leaves(Shape feet, List<Shape> watered) {
    Optional<Integer> first =
        watered.stream()
            .flatMap(bed -> entries(bed).stream())
            .filter(i -> Double.isFinite(fromTap.getWeight(i)))
            .min(Comparator.comparingDouble(i -> fromTap.getWeight(i)));
    if (first.isPresent()) {
      List<Integer> way = fromTap.getPath(first.get()).getVertexList();
      Geometry seen =
          Line.through(way.stream().map(points::get).toList()).jts().difference(feet.jts());
      if (!seen.isEmpty()) {
        return at(seen.getGeometryN(seen.getNumGeometries() - 1).getCoordinates()[0]);
      }
    }
    // No way, or a bed at the tank's foot: straight towards the nearest.
    return watered.stream()
        .min(Comparator.comparing(feet::distance))
        .map(bed -> at(DistanceOp.nearestPoints(feet.jts(), bed.jts())[0]))
        .orElse(start);
  }

  private static Point at(Coordinate c) {
    return Point.metres(c.x, c.y);
  }

  private static Optional<Point> tap(Plan plan, List<Shape> watered) {
    return plan.all(Element.WaterPoint.class).stream()
        .min(Comparator.comparingDouble((Element.WaterPoint tap) -> away(tap, watered)))
        .map(Element.WaterPoint::at);
  }

  private static double away(Element.WaterPoint tap, List<Shape> watered) {
    return watered.stream().mapToDouble(s -> s.distance(tap.at()).metres()).sum();
  }

  private boolean isFirstStep(Point at) {
    double stepM = start.distance(at).metres();
    return stepM > 0.001 && stepM <= FIRST_STEP.metres();
  }

  private void joinNearest(int i) {
    Point here = points.get(i);
    List<Integer> others =
        IntStream.range(0, points.size())
            .filter(j -> j != i)
            .boxed()
            .sorted(Comparator.comparing(j -> here.distance(points.get(j))))
            .limit(NEAREST)
            .toList();
    for (int j : others) {
      if (graph.getEdge(i, j) == null && isOpen(i, j)) {
        join(i, j);
      }
    }
  }

  /**
   * A tap stands at a wall: the first step from it may lie within the wall's margin. A slant over
   * the margin is longer than that; for it the pipe first steps off the wall squarely.
   */
  private boolean isOpen(int i, int j) {
    Line line = points.get(Math.min(i, j)).to(points.get(Math.max(i, j)));
    if (i != TAP && j != TAP) {
      return ground.isAllowed(line);
    }
    return line.length().compareTo(FIRST_STEP) <= 0
        || ground.isAllowed(line.part(FIRST_STEP, line.length()));
  }

  private void join(int i, int j) {
    DefaultWeightedEdge edge = graph.addEdge(i, j);
    graph.setEdgeWeight(edge, Math.max(1e-6, ground.cost(points.get(i).to(points.get(j)))));
  }

  /** Where the ways start: at the tap, or at the rim of the tank that feeds the lines. */
  public Point start() {
    return start;
  }

  public LineGround ground() {
    return ground;
  }

  /**
   * The corner of a bed to which the cheapest way leads; round a tree, which has none, where the
   * cheapest way meets it. Empty if no way does.
   */
  public Optional<Point> nearestCorner(Shape bed) {
    Optional<Integer> corner =
        entries(bed).stream()
            .filter(i -> Double.isFinite(fromTap.getWeight(i)))
            .min(Comparator.comparingDouble((Integer i) -> fromTap.getWeight(i)));
    return corner.map(points::get).or(() -> met(bed));
  }

  private Optional<Point> met(Shape bed) {
    Point best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < points.size(); i++) {
      Point from = points.get(i);
      Point at =
          at(
              DistanceOp.nearestPoints(
                  bed.jts(), bed.jts().getFactory().createPoint(from.coordinate()))[0]);
      double cost = fromTap.getWeight(i);
      if (cost < least && from.distance(at).metres() > 0 && ground.isAllowed(from.to(at))) {
        cost += ground.cost(from.to(at));
        if (cost < least) {
          least = cost;
          best = at;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private List<Integer> entries(Shape bed) {
    List<Integer> on = new ArrayList<>();
    for (int i = 1; i < points.size(); i++) {
      if (bed.distance(points.get(i)).metres() < 0.05) {
        on.add(i);
      }
    }
    return on;
  }

  /**
   * Where a bed is fed.
   *
   * @param name of the bed, and of the part that has a feed of its own
   */
  public record Feed(String name, Shape bed, Point at) {}

  /** The tree of trenches to all feeds; those that no way reaches are left out. */
  public LineTree tree(List<Feed> feeds) {
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> grown = copy();
    List<Point> places = new ArrayList<>(points);
    Map<String, Leaf> left = new TreeMap<>();
    for (Feed feed : feeds) {
      left.put(feed.name(), new Leaf(places.size(), doors(feed)));
      places.add(feed.at());
    }
    LineTree.Builder tree = new LineTree.Builder(places);
    while (!left.isEmpty()) {
      SingleSourcePaths<Integer, DefaultWeightedEdge> paths =
          new DijkstraShortestPath<>(grown).getPaths(TAP);
      String next =
          left.keySet().stream()
              .min(Comparator.comparingDouble(name -> left.get(name).cost(paths)))
              .orElseThrow();
      Leaf leaf = left.remove(next);
      if (!Double.isFinite(leaf.cost(paths))) {
        break;
      }
      GraphPath<Integer, DefaultWeightedEdge> path = paths.getPath(leaf.door(paths));
      List<Integer> way = new ArrayList<>(path.getVertexList());
      way.add(leaf.at());
      tree.add(next, way);
      path.getEdgeList().forEach(edge -> grown.setEdgeWeight(edge, 0));
    }
    return tree.build();
  }

  /**
   * A feed at the end of the tree; no line passes through it to somewhere else.
   *
   * @param doors from which it is reached, and what the way from each costs
   */
  private record Leaf(int at, Map<Integer, Double> doors) {
    double cost(SingleSourcePaths<Integer, DefaultWeightedEdge> paths) {
      return doors.keySet().stream()
          .mapToDouble(door -> cost(paths, door))
          .min()
          .orElse(Double.POSITIVE_INFINITY);
    }

    /** The cheapest; there must be one. */
    int door(SingleSourcePaths<Integer, DefaultWeightedEdge> paths) {
      return doors.keySet().stream()
          .min(Comparator.comparingDouble(door -> cost(paths, door)))
          .orElseThrow();
    }

    private double cost(SingleSourcePaths<Integer, DefaultWeightedEdge> paths, int door) {
      return paths.getWeight(door) + doors.get(door);
    }
  }

  /**
   * From where a feed is reached: one corner of its bed; or, without any, as round a tree, whatever
   * lies in sight, across the ground between, so that it may share a trench.
   */
  private Map<Integer, Double> doors(Feed feed) {
    Map<Integer, Double> doors = new TreeMap<>();
    List<Integer> corners = entries(feed.bed());
    corners.stream()
        .filter(i -> Double.isFinite(fromTap.getWeight(i)))
        .min(Comparator.comparingDouble(i -> fromTap.getWeight(i) + stub(i, feed)))
        .ifPresent(i -> doors.put(i, stub(i, feed)));
    for (int i = 0; corners.isEmpty() && i < points.size(); i++) {
      Line sight = points.get(i).to(feed.at());
      if (Double.isFinite(fromTap.getWeight(i)) && ground.isAllowed(sight)) {
        doors.put(i, ground.cost(sight));
      }
    }
    return doors;
  }

  private double stub(int entry, Feed feed) {
    return points.get(entry).distance(feed.at()).metres();
  }

  private SimpleWeightedGraph<Integer, DefaultWeightedEdge> copy() {
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> copy =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    graph.vertexSet().forEach(copy::addVertex);
    for (DefaultWeightedEdge edge : graph.edgeSet()) {
      DefaultWeightedEdge same = copy.addEdge(graph.getEdgeSource(edge), graph.getEdgeTarget(edge));
      copy.setEdgeWeight(same, graph.getEdgeWeight(edge));
    }
    return copy;
  }
}
