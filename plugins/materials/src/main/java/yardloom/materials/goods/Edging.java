package yardloom.materials.goods;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * An edging about a bed.
 *
 * @param what such as {@code steel strip}
 * @param piece the length of one piece
 */
public record Edging(String what, Length piece, SourceRef place) {
  /** On a bed: an edging about it. */
  public static final AttributeKey<Edging> KEY =
      new AttributeKey<>("materials.edging", Edging.class);
}
