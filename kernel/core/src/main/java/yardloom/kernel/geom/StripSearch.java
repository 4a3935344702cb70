package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * Looks for the bearing and phase of {@link Strips} that give the most area.
 *
 * <p>Tries the bearings of the region's longest edges and every {@value #STEP_DEG} degrees, each
 * with {@value #PHASES} phases over one strip and gap: an exhaustive search over a fixed list, so
 * the same region always gives the same answer. It finds the best of the list, not a proven
 * optimum. Of equal areas (within 10 cm²) the earliest wins: along the longest edge from the edge
 * on, then the other edges, then the rising bearings.
 */
public final class StripSearch {
  static final int STEP_DEG = 15;
  static final int PHASES = 8;
  private static final int EDGES = 8;
  private static final double SAME_M2 = 1e-3;

  /**
   * What was found.
   *
   * @param plain the area of the strips along the longest edge without a search
   */
  public record Found(Strips.Layout layout, List<Shape> strips, Area area, Area plain) {
    public Found {
      strips = List.copyOf(strips);
    }
  }

  private StripSearch() {}

  /** The best layout for strips of {@code width} with {@code gap} between them. */
  public static Found best(Shape region, Length width, Length gap) {
    Strips.Layout first = Strips.Layout.of(width, gap, Strips.longestEdge(region));
    List<Shape> strips = Strips.fill(region, first);
    Area plain = area(strips);
    Found best = new Found(first, strips, plain, plain);
    for (double deg : bearingsDeg(region)) {
      for (int k = 0; k < PHASES; k++) {
        Strips.Layout layout =
            new Strips.Layout(
                width,
                gap,
                Angle.degrees(deg),
                width.plus(gap).times((double) k / PHASES),
                first.least());
        List<Shape> tried = Strips.fill(region, layout);
        Area area = area(tried);
        if (area.squareMetres() > best.area().squareMetres() + SAME_M2) {
          best = new Found(layout, tried, area, plain);
        }
      }
    }
    return best;
  }

  private static Area area(List<Shape> strips) {
    Area sum = Area.ZERO;
    for (Shape strip : strips) {
      sum = sum.plus(strip.area());
    }
    return sum;
  }

  /** The bearings of the longest edges, longest first, then a fan over the half circle. */
  private static List<Double> bearingsDeg(Shape region) {
    record Edge(double lengthM, double deg) {}
    List<Edge> edges = new ArrayList<>();
    for (Polygon polygon : region.polygons()) {
      Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        edges.add(new Edge(ring[i].distance(ring[i + 1]), Strips.bearingDeg(ring[i], ring[i + 1])));
      }
    }
    edges.sort(
        java.util.Comparator.comparingDouble((Edge e) -> -e.lengthM())
            .thenComparingDouble(Edge::deg));
    List<Double> found = new ArrayList<>();
    TreeSet<Long> seen = new TreeSet<>();
    for (Edge edge : edges) {
      if (found.size() < EDGES && seen.add(Math.round(edge.deg() * 1e3))) {
        found.add(edge.deg());
      }
    }
    for (int deg = 0; deg < 180; deg += STEP_DEG) {
      if (seen.add(deg * 1000L)) {
        found.add((double) deg);
      }
    }
    return found;
  }
}
