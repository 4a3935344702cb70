package yardloom.soil.texture;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;

/**
 * Which named soil the yard has.
 *
 * @param rock share of the volume that is rock fragments
 * @param depth the depth that roots use
 */
public record SoilChoice(String name, double rock, Length depth, SourceRef place) {
  /** On the plan: which named soil it has. */
  public static final AttributeKey<SoilChoice> KEY =
      new AttributeKey<>("soil.soil-choice", SoilChoice.class);
}
