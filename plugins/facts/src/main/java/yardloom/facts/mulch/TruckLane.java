package yardloom.facts.mulch;

import yardloom.kernel.geom.Line;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * That paved ground bears trucks, from the street to where they tip.
 *
 * @param middle its middle line
 * @param width how wide it is
 */
public record TruckLane(Line middle, Length width) {
  /** Of the paving that it is. */
  public static final AttributeKey<TruckLane> KEY =
      new AttributeKey<>("site.truck-lane", TruckLane.class);
}
