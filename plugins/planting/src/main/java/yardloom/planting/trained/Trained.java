package yardloom.planting.trained;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * The form in which a tree of the plan is trained.
 *
 * @param width along its wires or wall; of a pyramid its diameter
 */
public record Trained(TrainedForm form, Length width) {
  /** How a tree is trained. */
  public static final AttributeKey<Trained> KEY =
      new AttributeKey<>("planting.trained", Trained.class);

  /** From front to back of a flat form: common practice. */
  private static final Length DEPTH = Length.feet(2);

  /** From front to back. */
  public Length depth() {
    return DEPTH.min(width);
  }

  /** Whether it is kept in one plane. */
  public boolean isFlat() {
    return form != TrainedForm.DWARF_PYRAMID;
  }

  /** The ground that its leaves cover. */
  public Area ground() {
    Length depth = isFlat() ? depth() : width.times(Math.PI / 4);
    return width.by(depth);
  }
}
