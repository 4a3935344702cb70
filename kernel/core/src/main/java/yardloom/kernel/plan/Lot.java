package yardloom.kernel.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import yardloom.kernel.geom.Arc;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Setbacks;
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

  /** The sides as setbacks need them. */
  public List<Setbacks.Side> setbackSides() {
    return edges.stream()
        .map(e -> new Setbacks.Side(e.name(), e.line(), e.arc(), e.setback()))
        .toList();
  }

  /** What the setbacks leave. */
  public Shape insideSetbacks() {
    return Setbacks.buildable(shape, setbackSides());
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
