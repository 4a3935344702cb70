package yardloom.water.overflow;

import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * The way of what a full tank lets go.
 *
 * @param from the tank, by name
 * @param inside diameter of the pipe
 */
public record OverflowPipe(Line line, String from, Length inside) {
  /** The overflows of the plan. */
  public static final AttributeKey<OverflowPipe> KEY =
      new AttributeKey<>("water.overflow", OverflowPipe.class);
}
