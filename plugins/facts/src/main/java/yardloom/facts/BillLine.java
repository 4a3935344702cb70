package yardloom.facts;

import java.util.Optional;
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
 */
public record BillLine(
    BillGroup group,
    WorkPhase phase,
    String item,
    Optional<ElementId> element,
    Optional<String> plant,
    Derived<?> exact,
    Derived<?> order,
    String allowance) {
  /**
   * What an item is without its sizes or its place, which stand behind a comma: the name that a
   * price or a load may have for all of them.
   */
  public static String stem(String item) {
    int comma = item.indexOf(", ");
    return comma < 0 ? item : item.substring(0, comma);
  }
}
