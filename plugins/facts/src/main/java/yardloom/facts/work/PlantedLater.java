package yardloom.facts.work;

import java.util.List;
import yardloom.kernel.plan.ElementId;

/**
 * A bed or tree of which kinds are planted in a season after that in which the work is done, so
 * that it gets its last mulch after them.
 *
 * @param in the bed or tree
 * @param kinds their catalogue names, at least one, in order
 */
public record PlantedLater(ElementId in, List<String> kinds) {
  public PlantedLater {
    kinds = List.copyOf(kinds);
    if (kinds.isEmpty()) {
      throw new IllegalArgumentException("nothing is planted later in " + in);
    }
  }
}
