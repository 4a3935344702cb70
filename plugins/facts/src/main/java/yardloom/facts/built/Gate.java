package yardloom.facts.built;

import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Length;

/**
 * Where ways into the yard start.
 *
 * @param width of its opening
 * @param standing whether it is there already, where the plan says so; else as its fence is
 */
public record Gate(String name, Point at, Length width, Optional<Boolean> standing) {
  /** On the plan, any number. */
  public static final AttributeKey<Gate> KEY = new AttributeKey<>("site.gate", Gate.class);
}
