package yardloom.water.roof;

import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Area;

/**
 * A downspout at its place.
 *
 * @param roof that it drains, by name
 * @param section inside
 */
public record Downspout(Point at, String roof, Area section) {
  /** The downspouts of the plan. */
  public static final AttributeKey<Downspout> KEY =
      new AttributeKey<>("water.downspout", Downspout.class);
}
