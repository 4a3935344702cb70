package yardloom.program.compare;

import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;

/**
 * An element of a plan as {@code results.json} has it.
 *
 * @param shape the ground it covers; empty for points
 * @param at where a point is
 */
record Thing(String kind, String name, Shape shape, Optional<Point> at) {
  /** {@code bed "south"}. */
  String id() {
    return kind + " \"" + name + "\"";
  }

  /** Where it is: its point, or the middle of its ground; empty if it has neither. */
  Optional<Point> middle() {
    return at.isPresent() || shape.isEmpty() ? at : Optional.of(shape.centroid());
  }
}
