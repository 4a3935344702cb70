package yardloom.materials.goods;

import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * Posts and wire for climbers and espaliers.
 *
 * @param spacing the most from post to post
 * @param post full length of a post
 */
public record Trellis(
    String name, Line line, Length spacing, int wires, Length post, SourceRef place) {
  /** On the plan, any number. */
  public static final AttributeKey<Trellis> KEY =
      new AttributeKey<>("materials.trellis", Trellis.class);
}
