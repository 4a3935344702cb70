package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.unit.Length;

/**
 * A way that somebody goes, from bend to bend, with its start and its end. It may stand still: a
 * route of one bend has no length.
 *
 * @param bends at least one
 */
public record Route(List<Point> bends) {
  /** {@code bends} is not empty. */
  public Route {
    bends = List.copyOf(bends);
    if (bends.isEmpty()) {
      throw new IllegalArgumentException("a route starts somewhere");
    }
  }

  public Point end() {
    return bends.get(bends.size() - 1);
  }

  /** How far it is: the sum of its straight pieces, so what is drawn is what is counted. */
  public Length length() {
    Length sum = Length.ZERO;
    for (int i = 1; i < bends.size(); i++) {
      sum = sum.plus(bends.get(i - 1).distance(bends.get(i)));
    }
    return sum;
  }

  /** This route, then straight to the start of {@code next} and along it. */
  public Route then(Route next) {
    List<Point> all = new ArrayList<>(bends);
    all.addAll(next.bends);
    return new Route(all);
  }
}
