package yardloom.site.path;

import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;

/** Where ways into the yard start. */
public record Gate(String name, Point at) {
  public static final AttributeKey<Gate> KEY = new AttributeKey<>("site.gate", Gate.class);
}
