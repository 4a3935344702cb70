package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/**
 * Places that do not lie on a lattice: on a circle, along a line, nearest to a point.
 *
 * <p>References: plain geometry. On a circle of radius r, n places lie 2 r sin(π / n) apart.
 */
public final class RingPlaces {
  private RingPlaces() {}

  /**
   * How many stand on a circle at least a spacing apart, straight from one to the next: the largest
   * n with 2 r sin(π / n) ≥ spacing; 1 where not even two do.
   */
  public static int count(Length radius, Length spacing) {
    double half = spacing.ratioTo(radius.times(2));
    return half > 1 ? 1 : (int) Math.floor(Math.PI / StrictMath.asin(half) + 1e-9);
  }

  /** Evenly on a circle, the first straight up the plan. */
  public static List<Point> round(Point centre, Length radius, int count) {
    List<Point> at = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double turn = 2 * Math.PI * i / count;
      at.add(centre.moved(radius.times(StrictMath.sin(turn)), radius.times(StrictMath.cos(turn))));
    }
    return List.copyOf(at);
  }

  /** As many as fit a spacing apart, centred on the line, at least half a spacing from its ends. */
  public static List<Point> along(Line line, Length spacing) {
    int count = (int) Math.floor(line.length().ratioTo(spacing) + 1e-9);
    Length from = line.length().minus(spacing.times(count - 1)).div(2);
    List<Point> at = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      at.add(line.at(from.plus(spacing.times(i))));
    }
    return List.copyOf(at);
  }

  /** The nearest of some places to a point, in the order in which they were given. */
  public static List<Point> nearest(List<Point> places, Point about, int count) {
    List<Point> sorted = new ArrayList<>(places);
    sorted.sort(
        Comparator.comparing((Point p) -> p.distance(about))
            .thenComparing(p -> p.x())
            .thenComparing(p -> p.y()));
    List<Point> near = sorted.subList(0, Math.min(count, sorted.size()));
    return places.stream().filter(near::contains).toList();
  }
}
