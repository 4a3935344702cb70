package yardloom.water.overflow;

import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * A planted hollow that is to take what a roof or its tank lets go.
 *
 * @param roof by its name on the plan
 * @param slopePercent of the ground where it comes
 * @param storm rain of a day that it must hold
 * @param sizeFactor share of the drained area, where the plan gives it
 */
public record OverflowGarden(
    String roof, double slopePercent, Length storm, Optional<Double> sizeFactor) {
  /** The hollows of the plan. */
  public static final AttributeKey<OverflowGarden> KEY =
      new AttributeKey<>("water.rain-garden", OverflowGarden.class);
}
