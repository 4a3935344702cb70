package yardloom.facts;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Quantity;

/**
 * Something to find or buy, for one element or for the whole plan.
 *
 * @param group the trade it belongs to
 * @param phase when it is needed
 * @param item what it is, such as {@code wood-chip mulch}
 * @param plant the catalogue name, where it is a plant, by which its visit is found
 * @param exact the quantity in place, without allowance: a {@link Quantity} or a count
 * @param order what to order after allowance and rounding to what is sold
 * @param allowance why the two differ
 * @param stock as what a plant is bought; empty for all else
 * @param on the day of the year on which it is used, where that is not within its phase
 */
public record BillLine(
    BillGroup group,
    WorkPhase phase,
    String item,
    Optional<ElementId> element,
    Optional<String> plant,
    Derived<?> exact,
    Derived<?> order,
    String allowance,
    Optional<Stock> stock,
    Optional<MonthDay> on) {
  /**
   * As what a plant is bought.
   *
   * @param names what price books call the form, where they have no price for the item itself
   * @param price of one, if the plan says with the form
   */
  public record Stock(List<String> names, Optional<Spread> price) {
    public Stock {
      names = List.copyOf(names);
    }
  }

  /** What is used in its phase, and no plant or nobody says as what it is bought. */
  public BillLine(
      BillGroup group,
      WorkPhase phase,
      String item,
      Optional<ElementId> element,
      Optional<String> plant,
      Derived<?> exact,
      Derived<?> order,
      String allowance) {
    this(
        group,
        phase,
        item,
        element,
        plant,
        exact,
        order,
        allowance,
        Optional.empty(),
        Optional.empty());
  }

  /**
   * What an item is without its sizes or its place, which stand behind a comma: the name that a
   * price or a load may have for all of them.
   */
  public static String stem(String item) {
    int comma = item.indexOf(", ");
    return comma < 0 ? item : item.substring(0, comma);
  }
}
