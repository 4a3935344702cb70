package yardloom.sheet.label;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/**
 * The outline on paper of what a label names.
 *
 * @param ring its corners, the first not repeated; at least three
 * @param bounds the upright box about it
 */
record Footprint(List<Xy> ring, Box bounds) {
  Footprint(List<Xy> ring) {
    this(ring, boundsOf(ring));
  }

  Footprint {
    ring = List.copyOf(ring);
    if (ring.size() < 3) {
      throw new IllegalArgumentException("an outline has at least three corners");
    }
  }

  /** The upright box about some points. */
  static Box boundsOf(List<Xy> points) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (Xy p : points) {
      left = Math.min(left, p.x());
      top = Math.min(top, p.y());
      right = Math.max(right, p.x());
      bottom = Math.max(bottom, p.y());
    }
    return new Box(left, top, right - left, bottom - top);
  }

  /** Whether the whole box lies in it. */
  boolean contains(Box box) {
    return Quad.of(box).corners().stream().allMatch(this::contains)
        && sides().noneMatch(i -> box.isCrossedBy(ring.get(i), next(i)));
  }

  /** By the even-odd rule. */
  boolean contains(Xy p) {
    return sides()
                .filter(i -> (ring.get(i).y() > p.y()) != (next(i).y() > p.y()))
                .filter(i -> p.x() < crossingX(ring.get(i), next(i), p.y()))
                .count()
            % 2
        == 1;
  }

  private static double crossingX(Xy from, Xy to, double y) {
    return from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
  }

  /** Between the two where they are nearest; 0 if they meet. */
  double distance(Box box) {
    if (contains(box.centre()) || sides().anyMatch(i -> box.isCrossedBy(ring.get(i), next(i)))) {
      return 0;
    }
    Quad quad = Quad.of(box);
    double fromRing = ring.stream().mapToDouble(quad::distance).min().orElseThrow();
    double fromBox =
        quad.corners().stream().mapToDouble(c -> nearest(c).distance(c)).min().orElseThrow();
    return Math.min(fromRing, fromBox);
  }

  /** The point of the outline nearest to {@code p}. */
  Xy nearest(Xy p) {
    return sides()
        .mapToObj(i -> Quad.nearest(p, ring.get(i), next(i)))
        .min(Comparator.comparingDouble(p::distance))
        .orElseThrow();
  }

  private IntStream sides() {
    return IntStream.range(0, ring.size());
  }

  private Xy next(int i) {
    return ring.get((i + 1) % ring.size());
  }
}
