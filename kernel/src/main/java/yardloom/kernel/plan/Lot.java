package yardloom.kernel.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * The ground that is planned.
 *
 * @param edges the sides in order around the lot, counter-clockwise
 */
public record Lot(SourceRef place, Shape shape, List<Edge> edges) {
  public Lot {
    Objects.requireNonNull(place);
    Objects.requireNonNull(shape);
    edges = List.copyOf(edges);
  }

  /**
   * One side of the lot.
   *
   * @param name how the plan calls it, such as {@code south}
   * @param setback how far buildings and beds keep away; zero if nothing is asked
   * @param rule who asks for the setback, for notes; empty if nobody
   * @param arc the true form of a curved side, whose chords are the line
   */
  public record Edge(
      String name, Line line, EdgeRole role, Length setback, String rule, Optional<Arc> arc) {
    /** A straight side. */
    public Edge(String name, Line line, EdgeRole role, Length setback, String rule) {
      this(name, line, role, setback, rule, Optional.empty());
    }
  }
}
