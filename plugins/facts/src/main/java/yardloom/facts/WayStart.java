package yardloom.facts;

import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;

/** Ground from which things are carried to the beds, beside gates: such as a spot for heaps. */
public record WayStart(String name, Shape ground) {
  public static final AttributeKey<WayStart> KEY =
      new AttributeKey<>("site.way-start", WayStart.class);
}
