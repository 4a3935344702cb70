package yardloom.planting.placing;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/** Where the plants of a line stand in their bed, if not in a slice of it. */
public sealed interface Placement {
  /** One at each point. */
  record Points(List<Point> at) implements Placement {
    public Points {
      at = List.copyOf(at);
    }
  }

  /**
   * Evenly round a tree.
   *
   * @param role what its kind does for a guild; empty for a ring of its own
   */
  record Ring(String tree, Length radius, int count, Optional<GuildRole> role)
      implements Placement {}

  /** One after the other along a line, half a spacing from its ends. */
  record Along(Line line) implements Placement {}

  /** A group, close together about a point. */
  record Drift(Point about, int count) implements Placement {}

  /**
   * Among the other kinds that are mixed into the bed, on one lattice with them.
   *
   * @param share of all plants
   * @param count in all, instead of a share
   */
  record Mixed(Optional<Double> share, Optional<Integer> count) implements Placement {}
}
