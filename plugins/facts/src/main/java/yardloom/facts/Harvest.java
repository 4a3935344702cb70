package yardloom.facts;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Mass;

/**
 * What all plants of the plan may bring in a year at full bearing.
 *
 * @param low the sum of the lowest figures
 * @param high the sum of the highest
 * @param leftOut names of plants whose yield is not known and not in these sums
 */
public record Harvest(Derived<Mass> low, Derived<Mass> high, List<String> leftOut) {
  public Harvest {
    leftOut = List.copyOf(leftOut);
  }
}
