package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import yardloom.kernel.unit.Length;

/** Random simple outlines for property tests: star-shaped about the origin, often not convex. */
final class Lots {
  private Lots() {}

  /** Rings of 4 to 12 corners, 4 m to 30 m from the middle, counter-clockwise. */
  static Arbitrary<List<Point>> rings() {
    return Arbitraries.integers()
        .between(4, 12)
        .flatMap(
            n ->
                Arbitraries.doubles()
                    .between(4, 30)
                    .ofScale(3)
                    .list()
                    .ofSize(n)
                    .flatMap(
                        radii ->
                            Arbitraries.doubles()
                                .between(-0.35, 0.35)
                                .ofScale(3)
                                .list()
                                .ofSize(n)
                                .map(jitter -> ring(radii, jitter))));
  }

  static List<Point> ring(List<Double> radiiM, List<Double> jitter) {
    int n = radiiM.size();
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * (i + jitter.get(i)) / n;
      ring.add(Point.metres(radiiM.get(i) * Math.cos(a), radiiM.get(i) * Math.sin(a)));
    }
    return ring;
  }

  static List<Setbacks.Side> sides(List<Point> ring, List<Double> distancesM) {
    List<Setbacks.Side> sides = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      sides.add(
          new Setbacks.Side(
              "side " + (i + 1),
              Line.between(ring.get(i), ring.get((i + 1) % ring.size())),
              Optional.empty(),
              Length.metres(distancesM.get(i % distancesM.size()))));
    }
    return sides;
  }

  static Shape convexHull(List<Point> ring) {
    return Shape.of(Overlay.ring(ring).convexHull());
  }
}
