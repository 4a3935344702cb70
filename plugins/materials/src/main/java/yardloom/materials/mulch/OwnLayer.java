package yardloom.materials.mulch;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * A layer of a bulk material of the plan's own on a bed, path or ground.
 *
 * @param depth as laid
 */
public record OwnLayer(String material, Length depth) {
  public static final AttributeKey<OwnLayer> KEY =
      new AttributeKey<>("materials.own-layer", OwnLayer.class);
}
