package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.DistanceOp;
import yardloom.kernel.unit.Length;

/**
 * Ways along the middle lines of paths and straight across hard surfaces.
 *
 * <p>Two ways are joined where their ground touches: their middle lines are linked by the shortest
 * line between them. Lengths are therefore those of somebody who keeps to the middle of paths and
 * crosses surfaces straight, or round the corners that reach into them. Shortest ways by Dijkstra's
 * method [1], from the library JGraphT.
 *
 * <p>References: [1] E. W. Dijkstra, A note on two problems in connexion with graphs, Numerische
 * Mathematik 1, 1959, pp. 269-271.
 */
public final class WayNetwork {
  /** Ground this close counts as touching. */
  private static final Length TOUCH = Length.metres(0.05);

  private static final double ON_LINE_M = 1e-4;

  /**
   * One way.
   *
   * @param middle its middle line; empty for a surface that may be crossed anywhere
   */
  public record Way(Shape ground, Optional<Line> middle) {
    /**
     * What is left of the way where {@code barrier} takes its ground: itself if nothing, otherwise
     * a way for each piece of its middle, or for each part of a surface.
     */
    public List<Way> without(Shape barrier) {
      if (!ground.overlaps(barrier)) {
        return List.of(this);
      }
      Shape left = ground.minus(barrier);
      if (middle.isEmpty()) {
        return left.parts().stream().map(part -> new Way(part, middle)).toList();
      }
      Geometry lines = Overlay.linesOutside(middle.get().jts(), barrier.jts());
      if (lines.getLength() >= middle.get().length().metres() - ON_LINE_M) {
        return List.of(new Way(left, middle));
      }
      List<Way> ways = new ArrayList<>();
      for (Line piece : Overlay.merged(lines)) {
        left.parts().stream()
            .filter(part -> part.contains(piece.middle()))
            .findFirst()
            .ifPresent(part -> ways.add(new Way(part, Optional.of(piece))));
      }
      return ways;
    }
  }

  private final List<Way> ways;
  private final Map<Integer, FreeCrossing> surfaces = new HashMap<>();
  private final Graph<Coordinate, DefaultWeightedEdge> graph =
      new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
  private final SingleSourcePaths<Coordinate, DefaultWeightedEdge> fromStart;
  private final STRtree pieces;

  /** The nodes, and how far each is from the start. */
  private final Coordinate[] nodes;

  private final double[] nodesM;

  /**
   * The ways, and how far everything is from {@code start}.
   *
   * @param reach how far beside a way somebody may start
   */
  public WayNetwork(List<Way> ways, Point start, Length reach) {
    this(ways, start, reach, new Sights.All());
  }

  WayNetwork(List<Way> ways, Point start, Length reach, Sights.All sights) {
    this(ways, start, Overlay.FACTORY.createPoint(start.coordinate()), reach, sights);
  }

  /**
   * The ways, and how far everything is from the middle of {@code start}, such as a heap.
   *
   * @param reach how far from the edge of {@code start} a way may be
   */
  public WayNetwork(List<Way> ways, Shape start, Length reach) {
    this(ways, start, reach, new Sights.All());
  }

  WayNetwork(List<Way> ways, Shape start, Length reach, Sights.All sights) {
    this(ways, start.heart(), start.jts(), reach, sights);
  }

  private WayNetwork(
      List<Way> ways, Point start, Geometry around, Length reach, Sights.All sights) {
    this.ways = List.copyOf(ways);
    List<Geometry> lines = new ArrayList<>();
    ways.forEach(w -> w.middle().ifPresent(m -> lines.add(m.jts())));
    Geometry origin = Overlay.FACTORY.createPoint(start.coordinate());
    Map<Integer, List<Coordinate>> doors = new HashMap<>();
    for (int i = 0; i < ways.size(); i++) {
      if (ways.get(i).middle().isEmpty()) {
        surfaces.put(i, new FreeCrossing(sights.of(ways.get(i).ground(), TOUCH)));
      }
      if (ways.get(i).ground().jts().distance(around) <= reach.metres()) {
        join(origin, i, lines, doors);
      }
      for (int j = 0; j < i; j++) {
        if (ways.get(i).ground().distance(ways.get(j).ground()).compareTo(TOUCH) <= 0) {
          join(i, j, lines, doors);
        }
      }
    }
    build(lines);
    doors.forEach((i, d) -> crossings(surfaces.get(i), d));
    fromStart = explore(start.coordinate());
    pieces = indexed();
    nodes = graph.vertexSet().toArray(new Coordinate[0]);
    nodesM = Arrays.stream(nodes).mapToDouble(fromStart::getWeight).toArray();
  }

  private Geometry body(int i) {
    Way way = ways.get(i);
    return way.middle().isPresent() ? way.middle().get().jts() : way.ground().jts();
  }

  private void join(
      Geometry origin, int i, List<Geometry> lines, Map<Integer, List<Coordinate>> doors) {
    Coordinate[] near = DistanceOp.nearestPoints(origin, body(i));
    link(near[0], near[1], lines);
    door(i, near[1], doors);
  }

  private void join(int i, int j, List<Geometry> lines, Map<Integer, List<Coordinate>> doors) {
    Coordinate[] near = DistanceOp.nearestPoints(body(i), body(j));
    link(near[0], near[1], lines);
    door(i, near[0], doors);
    door(j, near[1], doors);
    bends(i, j, doors);
    bends(j, i, doors);
  }

  /** Where a path runs over a surface, people leave it at its ends, its bends and the edge. */
  private void bends(int path, int on, Map<Integer, List<Coordinate>> doors) {
    Optional<Line> middle = ways.get(path).middle();
    if (middle.isEmpty() || ways.get(on).middle().isPresent()) {
      return;
    }
    for (Coordinate c : Overlay.lineInside(body(on), body(path)).getCoordinates()) {
      door(on, c, doors);
    }
  }

  private void door(int i, Coordinate at, Map<Integer, List<Coordinate>> doors) {
    if (ways.get(i).middle().isEmpty()) {
      doors.computeIfAbsent(i, k -> new ArrayList<>()).add(at);
    }
  }

  /**
   * The straight ways over a surface. They do not meet each other, since the shortest turns at
   * corners and doors only.
   */
  private void crossings(FreeCrossing ground, List<Coordinate> doors) {
    List<Coordinate> stops = new ArrayList<>(doors);
    stops.addAll(ground.corners());
    // A corner on a path or on another surface is a door too.
    stops.stream().filter(this::attach).toList().forEach(ground::leaveAt);
    doors.forEach(ground::leaveAt);
    for (int i = 0; i < stops.size(); i++) {
      for (int j = 0; j < i; j++) {
        Coordinate a = stops.get(i);
        Coordinate b = stops.get(j);
        if (ground.mayTurn(a, b) && ground.mayTurn(b, a) && ground.isClear(a, b)) {
          edge(a, b);
        }
      }
    }
  }

  /** A place on a piece between two nodes reaches both; whether it lies on a way so far. */
  private boolean attach(Coordinate at) {
    if (!graph.addVertex(at)) {
      return true;
    }
    boolean on = false;
    for (DefaultWeightedEdge piece : List.copyOf(graph.edgeSet())) {
      Coordinate a = graph.getEdgeSource(piece);
      Coordinate b = graph.getEdgeTarget(piece);
      if (isOn(piece, a, b, at)) {
        edge(at, a);
        edge(at, b);
        on = true;
      }
    }
    return on;
  }

  private static void link(Coordinate a, Coordinate b, List<Geometry> lines) {
    if (a.distance(b) > ON_LINE_M) {
      lines.add(Overlay.FACTORY.createLineString(new Coordinate[] {a.copy(), b.copy()}));
    }
  }

  private void build(List<Geometry> lines) {
    if (lines.isEmpty()) {
      return;
    }
    Geometry noded = Overlay.noded(lines);
    for (int i = 0; i < noded.getNumGeometries(); i++) {
      Coordinate[] c = ((LineString) noded.getGeometryN(i)).getCoordinates();
      for (int k = 0; k + 1 < c.length; k++) {
        edge(c[k], c[k + 1]);
      }
    }
  }

  private void edge(Coordinate a, Coordinate b) {
    if (!a.equals2D(b)) {
      Graphs.addEdgeWithVertices(graph, a, b, a.distance(b));
    }
  }

  /** A start on the middle of a piece reaches both of its ends. */
  private SingleSourcePaths<Coordinate, DefaultWeightedEdge> explore(Coordinate start) {
    attach(start);
    return new DijkstraShortestPath<>(graph).getPaths(start);
  }

  /** Whether no way comes near the start. */
  public boolean isCutOff() {
    return graph.edgesOf(fromStart.getSourceVertex()).isEmpty();
  }

  /**
   * The way to where one can work on {@code goal}: to the nearest place on a way whose ground comes
   * within {@code reach} of it. Empty if there is no way.
   */
  public Optional<Route> to(Shape goal, Length reach) {
    Stop best = Stop.NOWHERE;
    for (int i = 0; i < ways.size(); i++) {
      if (ways.get(i).ground().distance(goal).compareTo(reach) <= 0) {
        for (Coordinate at : places(i, goal, reach)) {
          best = best.orNearer(stop(at, i, best.wayM()));
        }
      }
    }
    return route(best);
  }

  /** The way to halfway along a path of the network. Empty if it is none or none leads there. */
  public Optional<Route> halfwayAlong(Line middle) {
    Stop best = Stop.NOWHERE;
    for (int i = 0; i < ways.size(); i++) {
      if (ways.get(i).middle().filter(middle::equals).isPresent()) {
        best = best.orNearer(stop(middle.middle().coordinate(), i, best.wayM()));
      }
    }
    return route(best);
  }

  /** Where one may stop on a way: nearest to the goal, and beside each corner within reach. */
  private List<Coordinate> places(int i, Shape goal, Length reach) {
    List<Coordinate> places = new ArrayList<>();
    places.add(DistanceOp.nearestPoints(body(i), goal.jts())[0]);
    for (Coordinate corner : goal.jts().getCoordinates()) {
      if (ways.get(i).ground().distance(Point.of(corner)).compareTo(reach) <= 0) {
        Geometry at = Overlay.FACTORY.createPoint(corner);
        places.add(DistanceOp.nearestPoints(body(i), at)[0]);
      }
    }
    return places;
  }

  /** A place on a way, the node before it, and how far it is from the start. */
  private record Stop(Coordinate at, Coordinate from, double wayM) {
    static final Stop NOWHERE = new Stop(null, null, Double.POSITIVE_INFINITY);

    Stop orNearer(Stop other) {
      return other.wayM < wayM ? other : this;
    }
  }

  /**
   * The nearest node that a place on a way is reached from, if it is nearer than so much: tried in
   * order, since looking is dear.
   */
  private Stop stop(Coordinate at, int way, double nearerThanM) {
    // A place on a path that runs over open ground is reached over that ground too.
    List<FreeCrossing> over =
        ways.get(way).middle().isEmpty()
            ? List.of(surfaces.get(way))
            : surfaces.values().stream().filter(s -> s.contains(at)).toList();
    Set<Coordinate> ends = endsAround(at);
    List<Stop> nearer = new ArrayList<>();
    for (int i = 0; i < nodes.length; i++) {
      // The longer leg nearly always tells; the root is dear.
      double leg = Math.max(Math.abs(nodes[i].x - at.x), Math.abs(nodes[i].y - at.y));
      if (nodesM[i] + leg < nearerThanM) {
        Stop stop = new Stop(at, nodes[i], nodesM[i] + nodes[i].distance(at));
        if (stop.wayM() < nearerThanM) {
          nearer.add(stop);
        }
      }
    }
    nearer.sort(Comparator.comparingDouble(Stop::wayM));
    return nearer.stream()
        .filter(s -> isReached(s.from(), at, over, ends))
        .findFirst()
        .orElse(Stop.NOWHERE);
  }

  private static boolean isReached(
      Coordinate from, Coordinate at, List<FreeCrossing> over, Set<Coordinate> ends) {
    return ends.contains(from)
        || from.distance(at) <= ON_LINE_M
        || over.stream()
            .anyMatch(s -> s.mayTurn(from, at) && s.contains(from) && s.isClear(from, at));
  }

  private Optional<Route> route(Stop stop) {
    if (!Double.isFinite(stop.wayM())) {
      return Optional.empty();
    }
    List<Point> bends = new ArrayList<>();
    fromStart.getPath(stop.from()).getVertexList().forEach(c -> bends.add(Point.of(c)));
    if (stop.at().distance(stop.from()) > ON_LINE_M) {
      bends.add(Point.of(stop.at()));
    }
    return Optional.of(new Route(bends));
  }

  /** The ends of all pieces that a place lies on. */
  private Set<Coordinate> endsAround(Coordinate at) {
    Set<Coordinate> ends = new HashSet<>();
    for (Object found : pieces.query(new Envelope(at))) {
      DefaultWeightedEdge piece = (DefaultWeightedEdge) found;
      Coordinate a = graph.getEdgeSource(piece);
      Coordinate b = graph.getEdgeTarget(piece);
      if (isOn(piece, a, b, at)) {
        ends.add(a);
        ends.add(b);
      }
    }
    return ends;
  }

  private boolean isOn(DefaultWeightedEdge piece, Coordinate a, Coordinate b, Coordinate at) {
    return a.distance(at) + at.distance(b) - graph.getEdgeWeight(piece) <= ON_LINE_M;
  }

  /**
   * The pieces by where they lie. What counts as on a piece is an ellipse about its ends, which is
   * wider than the tolerance: half its width is √(2 w t + t²) / 2 for a length w and a tolerance t.
   */
  private STRtree indexed() {
    STRtree tree = new STRtree();
    for (DefaultWeightedEdge piece : graph.edgeSet()) {
      double lengthM = graph.getEdgeWeight(piece);
      Envelope around = new Envelope(graph.getEdgeSource(piece), graph.getEdgeTarget(piece));
      around.expandBy(Math.sqrt(2 * lengthM * ON_LINE_M + ON_LINE_M * ON_LINE_M) / 2 + ON_LINE_M);
      tree.insert(around, piece);
    }
    tree.build();
    return tree;
  }
}
