package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.statistics.Statistics;
import org.jgrapht.alg.shortestpath.FloydWarshallShortestPaths;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.unit.Length;

/**
 * The way over ground with beds in it against the plain method: every corner joined to every corner
 * that it sees (visibility graph: de Berg et al., Computational Geometry, 3rd ed. 2008, section
 * 15.2), sight worked out by the geometry library's {@code covers}, nothing left out.
 */
class WayOverGroundLawTest {
  private static final Length REACH = Length.metres(0.6);

  private static Point p(double x, double y) {
    return Point.metres(x, y);
  }

  private static Shape square(double x, double y, double side) {
    return Shape.rectangle(p(x, y), Length.metres(side), Length.metres(side));
  }

  /** Beds of 3 m on a 5 m grid in a yard of 30 m; half of the starts are corners of beds. */
  @Property(tries = 60, seed = "20261128")
  void toThePathAtTheEdge_isTheShortestOfAllThatSeeEachOther(
      @ForAll @Size(min = 1, max = 14) List<@IntRange(min = 0, max = 24) Integer> cells,
      @ForAll @IntRange(min = 0, max = 30) int x,
      @ForAll @IntRange(min = 0, max = 30) int y) {
    List<Shape> beds = new ArrayList<>();
    new TreeSet<>(cells).forEach(c -> beds.add(square(1 + 5.0 * (c % 5), 1 + 5.0 * (c / 5), 3)));
    Shape yard = beds.stream().reduce(square(0, 0, 30), Shape::minus);
    Point start = p(x, y);
    Assume.that(yard.distance(start).metres() == 0);
    Statistics.label("at a corner").collect(isCorner(yard, start));
    assertEquals(plain(yard, start.coordinate()) + 6, found(yard, start), 1e-3);
  }

  /** No shortest way bends at this corner on its way south, but this one begins there. */
  @Test
  void startAtAnInnerCorner_isLeftStraight() {
    Shape yard = Shape.polygon(List.of(p(0, 0), p(30, 0), p(30, 18), p(9, 18), p(9, 30), p(0, 30)));
    assertEquals(Math.hypot(21, 3) + 6, found(yard, p(9, 18)), 1e-3);
  }

  private static boolean isCorner(Shape yard, Point start) {
    return List.of(yard.jts().getCoordinates()).contains(start.coordinate());
  }

  /** To a bed 6 m along the path that leaves the yard at (30, 15). */
  private static double found(Shape yard, Point start) {
    Line out = Line.through(List.of(p(30, 15), p(40, 15)));
    WayNetwork net =
        new WayNetwork(
            List.of(
                new WayNetwork.Way(yard, Optional.empty()),
                new WayNetwork.Way(PathStrip.centred(out, Length.metres(1)), Optional.of(out))),
            start,
            REACH);
    return net.to(square(36, 15.5, 1), REACH).orElseThrow().length().metres();
  }

  private static double plain(Shape yard, Coordinate start) {
    Geometry room = yard.grown(Length.metres(1e-4)).jts();
    List<Coordinate> all = new ArrayList<>(List.of(yard.jts().getCoordinates()));
    Coordinate end = new Coordinate(30, 15);
    all.add(start);
    all.add(end);
    SimpleWeightedGraph<Coordinate, DefaultWeightedEdge> sees =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    all.forEach(sees::addVertex);
    for (Coordinate a : all) {
      for (Coordinate b : all) {
        Geometry line = Overlay.FACTORY.createLineString(new Coordinate[] {a, b});
        if (!a.equals2D(b) && !sees.containsEdge(a, b) && room.covers(line)) {
          sees.setEdgeWeight(sees.addEdge(a, b), a.distance(b));
        }
      }
    }
    return new FloydWarshallShortestPaths<>(sees).getPathWeight(start, end);
  }
}
