package yardloom.facts.region;

import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * A rate that holds in a region or for one yard.
 *
 * @param item the task or material, as the shipped table names it
 * @param unit labour: the word of the unit that the hours are for; load: {@code yd3}; density:
 *     {@code lb/yd3}; price: the word of the unit that it is for
 * @param place where it is said
 */
public record LocalRate(Kind kind, String item, String unit, Spread value, SourceRef place) {
  /** The unit of counted things. */
  public static final String PIECE = "piece";

  /**
   * How many units a rate counts in an amount, a quantity or a count.
   *
   * @param unit the word of a unit of the quantity's kind; pieces for a count
   */
  public static double units(Object amount, String unit) {
    return unit.equals(PIECE)
        ? ((Number) amount).doubleValue()
        : ((Quantity<?>) amount).in(Unit.byWord(unit).orElseThrow());
  }

  /** What a rate is about. */
  public enum Kind {
    /** Money for one unit. */
    PRICE,
    /** Hours of one person for one unit. */
    LABOUR,
    /** Volume of one truckload. */
    LOAD,
    /** Mass by volume, as delivered. */
    DENSITY
  }
}
