package yardloom.materials.goods;

import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * Ground paved with pieces.
 *
 * @param waste share for cuts and breakage
 * @param base compacted base under the bedding sand
 */
public record PaverField(
    String name,
    Shape shape,
    Length length,
    Length width,
    Length thickness,
    double waste,
    Length base,
    SourceRef place) {
  /** On the plan, any number. */
  public static final AttributeKey<PaverField> KEY =
      new AttributeKey<>("materials.pavers", PaverField.class);
}
