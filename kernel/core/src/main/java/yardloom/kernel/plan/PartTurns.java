package yardloom.kernel.plan;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The turn of each part of a plan.
 *
 * @param name what is made now, as tables call it; empty for the plan as a whole
 * @param byPart the turn of each part by its name; what stands outside of all parts is under the
 *     empty name
 */
public record PartTurns(String name, Map<String, PartTurn> byPart) {
  /** Of a plan that has no parts: all is made now. */
  static final PartTurns NONE = new PartTurns("", Map.of());

  public PartTurns {
    byPart = Collections.unmodifiableMap(new TreeMap<>(byPart));
  }

  PartTurn of(String part) {
    return part.equals(PartTurn.BUILT) ? PartTurn.DONE : byPart.getOrDefault(part, PartTurn.NOW);
  }
}
