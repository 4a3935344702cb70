package yardloom.sheet.label;

import java.util.List;
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
    return bounds.contains(new Xy(box.x(), box.y()))
        && Quad.of(box).corners().stream().allMatch(this::contains)
        && !isCrossing(box);
  }

  /** By the even-odd rule. */
  boolean contains(Xy p) {
    boolean odd = false;
    Xy from = ring.get(ring.size() - 1);
    for (Xy to : ring) {
      if ((from.y() > p.y()) != (to.y() > p.y()) && p.x() < crossingX(from, to, p.y())) {
        odd = !odd;
      }
      from = to;
    }
    return odd;
  }

  private boolean isCrossing(Box box) {
    Xy from = ring.get(ring.size() - 1);
    for (Xy to : ring) {
      if (box.isCrossedBy(from, to)) {
        return true;
      }
      from = to;
    }
    return false;
  }

  private static double crossingX(Xy from, Xy to, double y) {
    return from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
  }

  /** Between the two where they are nearest; 0 if they meet. */
  double distance(Box box) {
    if (contains(box.centre()) || isCrossing(box)) {
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
    Xy nearest = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ring.size(); i++) {
      Xy on = Quad.nearest(p, ring.get(i), ring.get((i + 1) % ring.size()));
      double away = p.distance(on);
      if (nearest == null || away < least) {
        nearest = on;
        least = away;
      }
    }
    return nearest;
  }
}
