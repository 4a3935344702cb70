package yardloom.water.drip;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;

/**
 * The {@code drip} line of a bed.
 *
 * @param emitter flow of one outlet at its working pressure
 * @param spacing distance of outlets along the tube
 * @param rowSpacing distance of tubes
 */
public record DripChoice(Flow emitter, Length spacing, Length rowSpacing) {
  /** The dripline of a bed. */
  public static final AttributeKey<DripChoice> KEY =
      new AttributeKey<>("water.drip", DripChoice.class);
}
