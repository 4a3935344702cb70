package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import yardloom.kernel.unit.Length;

/**
 * Shortest ways that do not leave a shape, to 1 mm: straight where that stays inside, otherwise
 * bent at the corners that stand in the way. A shortest way in a polygon bends at its reflex
 * corners only.
 */
public final class InsideWay {
  private static final double SLACK_M = 1e-3;

  private final PreparedGeometry within;
  private final List<Point> corners = new ArrayList<>();

  public InsideWay(Shape shape) {
    within = PreparedGeometryFactory.prepare(shape.grown(Length.metres(SLACK_M)).jts());
    for (Polygon polygon : shape.polygons()) {
      for (LineString ring : Inset.rings(polygon)) {
        boolean hole = ring != polygon.getExteriorRing();
        addReflex(ring.getCoordinates(), Orientation.isCCW(ring.getCoordinates()) != hole);
      }
    }
  }

  private void addReflex(Coordinate[] c, boolean areaOnLeft) {
    int wrong = areaOnLeft ? Orientation.CLOCKWISE : Orientation.COUNTERCLOCKWISE;
    for (int i = 0; i + 1 < c.length; i++) {
      Coordinate before = c[i == 0 ? c.length - 2 : i - 1];
      if (Orientation.index(before, c[i], c[i + 1]) == wrong) {
        corners.add(Point.of(c[i]));
      }
    }
  }

  /** Whether the straight way stays inside. */
  public boolean isStraight(Point from, Point to) {
    return from.distance(to).metres() < SLACK_M || within.covers(from.to(to).jts());
  }

  /** The shortest way; empty if both lie in different parts. */
  public Optional<Line> between(Point from, Point to) {
    if (isStraight(from, to)) {
      return Optional.of(from.to(to));
    }
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    List<Point> nodes = new ArrayList<>(corners);
    Collections.addAll(nodes, from, to);
    for (int i = 0; i < nodes.size(); i++) {
      graph.addVertex(i);
      for (int j = 0; j < i; j++) {
        if (isStraight(nodes.get(i), nodes.get(j))) {
          DefaultWeightedEdge edge = graph.addEdge(j, i);
          graph.setEdgeWeight(edge, nodes.get(i).distance(nodes.get(j)).metres());
        }
      }
    }
    GraphPath<Integer, DefaultWeightedEdge> path =
        DijkstraShortestPath.findPathBetween(graph, nodes.size() - 2, nodes.size() - 1);
    return path == null
        ? Optional.empty()
        : Optional.of(Line.through(path.getVertexList().stream().map(nodes::get).toList()));
  }
}
