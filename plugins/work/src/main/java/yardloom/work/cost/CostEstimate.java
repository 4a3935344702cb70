package yardloom.work.cost;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.unit.Money;

/**
 * What it may cost.
 *
 * @param rows one for each priced line and one for labour
 * @param unpriced items for which no price is known
 * @param drivers what makes the total spread, largest first
 * @param demo whether invented prices are among the rows
 */
public record CostEstimate(
    List<Row> rows, Row total, List<String> unpriced, List<Driver> drivers, boolean demo) {
  /** What it may cost. */
  public static final FactKey<CostEstimate> FACT =
      FactKey.one("work.cost", CostEstimate.class).called("cost");

  /** Whether any sum of the plan is at invented prices; not where no cost is worked out. */
  public static boolean atDemonstrationPrices(Facts facts) {
    return facts.find(FACT).map(CostEstimate::demo).orElse(false);
  }

  public CostEstimate {
    rows = List.copyOf(rows);
    unpriced = List.copyOf(unpriced);
    drivers = List.copyOf(drivers);
  }

  /**
   * The cost of one item.
   *
   * @param likely the cost with every input at its likely value
   * @param p10 the cost that a tenth of the samples stay below
   */
  public record Row(
      String item,
      Derived<Money> likely,
      Derived<Money> p10,
      Derived<Money> p50,
      Derived<Money> p90) {
    /** Whether what it costs with everything likely lies between a tenth and nine tenths. */
    public boolean likelyLiesBetween() {
      return likely.value().compareTo(p10.value()) >= 0
          && likely.value().compareTo(p90.value()) <= 0;
    }
  }

  /**
   * One cause of the spread.
   *
   * @param low the total if only this input were low and all others likely
   * @param high the total if only this input were high
   */
  public record Driver(String name, String cause, Money low, Money high) {
    public Money swing() {
      return high.minus(low);
    }
  }
}
