package yardloom.water.head;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;

/**
 * A part of a plan's own at the tap.
 *
 * @param at the name of a shipped part
 * @param isAdded whether it stands behind that part; else in its place
 * @param place where the plan says so
 */
public record OwnPart(HeadPart part, String at, boolean isAdded, SourceRef place) {
  /** Said by {@code headPart} and {@code headParts}. */
  static final AttributeKey<OwnPart> KEY = new AttributeKey<>("water.head-part", OwnPart.class);

  /** Whether both are of one name, or would stand in the place of one part. */
  boolean isSame(OwnPart other) {
    return part.name().equalsIgnoreCase(other.part.name())
        || !isAdded && !other.isAdded && at.equals(other.at);
  }
}
