package yardloom.work.cost;

import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.source.Source;
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

  /**
   * A bill writes names together, of 60 letters each at most, as a plant's own, its botanical one
   * and its form: three of them and what stands between.
   */
  private static final int LONGEST_NAME = 200;

  /**
   * The name that a price is for, without spaces about it.
   *
   * @throws PlanException (OUT_OF_RANGE) if it has no letters, more than any item of a bill, or is
   *     not one line of plain text
   */
  public static String name(String item) {
    String name = item.strip();
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the name of a bill item needs 1 to "
              + LONGEST_NAME
              + " letters, got "
              + (name.isEmpty() ? "none" : name.length() + ": '" + name.substring(0, 40) + "…'"));
    }
    return Making.plain("bill item", name);
  }

  /**
   * What one unit costs at the least, likely and at the most.
   *
   * @throws PlanException (OUT_OF_RANGE) at {@code place} if they do not rise, are negative or
   *     beyond {@link Spread#MOST}
   */
  public static Spread spread(
      double low, double likely, double high, Source source, SourceRef place) {
    if (!(low >= 0 && low <= likely && likely <= high && high <= Spread.MOST)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          place,
          "prices must rise from low to likely to high, from 0 to a thousand million, got "
              + low
              + ", "
              + likely
              + ", "
              + high);
    }
    return new Spread(low, likely, high, "price", source);
  }

  public Price {
    if (!unit.equals(LocalRate.PIECE) && Unit.byWord(unit).isEmpty()) {
      throw new IllegalArgumentException("unknown unit " + unit);
    }
  }
}
