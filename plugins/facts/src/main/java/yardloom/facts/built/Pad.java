package yardloom.facts.built;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * The base that something built stands on.
 *
 * @param depth of compacted gravel; none where it stands on the ground itself
 */
public record Pad(Length depth) {
  /** On a structure. */
  public static final AttributeKey<Pad> KEY = new AttributeKey<>("site.pad", Pad.class);
}
