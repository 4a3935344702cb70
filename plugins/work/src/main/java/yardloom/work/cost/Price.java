package yardloom.work.cost;

import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Unit;

/**
 * What one unit of an item costs, in the plan's currency.
 *
 * @param item the name on the bill, or {@code any} and a group of the bill
 * @param unit the unit's word in scripts, or {@code piece}
 * @param perUnit low, likely and high
 * @param demo whether it was invented for demonstration
 */
public record Price(String item, String unit, Spread perUnit, boolean demo) {
  /** On the plan, any number: the user's own prices. */
  public static final AttributeKey<Price> KEY = new AttributeKey<>("work.price", Price.class);

  public Price {
    if (!unit.equals(LocalRate.PIECE) && Unit.byWord(unit).isEmpty()) {
      throw new IllegalArgumentException("unknown unit " + unit);
    }
  }
}
