package yardloom.work.labour;

import java.util.List;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/**
 * A thing or a task of the plan's own.
 *
 * @param name what the bill, the labour table and the crew's page call it
 * @param amount a count or a quantity; it is ordered as it is, without allowance
 * @param unit the word of the unit that price and hours are for, or {@code piece}
 * @param hoursPerUnit hours of one person for one unit; 0 where it takes no work
 * @param element the name of the element that it is for, as the plan has it
 * @param bought whether it stands on the bill, and not in the labour table only
 */
public record OwnItem(
    String name,
    Derived<?> amount,
    String unit,
    double hoursPerUnit,
    WorkPhase phase,
    Optional<String> element,
    boolean bought,
    Source source) {
  /** On the plan, any number. */
  public static final AttributeKey<OwnItem> KEY =
      new AttributeKey<>("work.own-item", OwnItem.class);

  /** The element that it is for, if the plan has it. */
  public Optional<ElementId> of(Plan plan) {
    return element.flatMap(
        name ->
            plan.elements().stream().map(Element::id).filter(id -> id.isCalled(name)).findFirst());
  }

  /**
   * Those of the plan that are bought or done now. One for an element is done with it, unless it is
   * said in another part of the plan.
   */
  public static List<OwnItem> now(Plan plan) {
    return plan.attributes().all(KEY).stream()
        .filter(entry -> isNow(plan, entry))
        .map(Attributes.Entry::value)
        .toList();
  }

  private static boolean isNow(Plan plan, Attributes.Entry<OwnItem> entry) {
    return entry
        .value()
        .of(plan)
        .filter(id -> entry.part().isEmpty())
        .flatMap(plan::element)
        .filter(of -> !of.part().isEmpty())
        .map(of -> of.turn() == PartTurn.NOW)
        .orElseGet(() -> plan.isNow(entry));
  }

  /** How the labour table calls the work of it. */
  public String task() {
    return bought ? "install " + name : name;
  }
}
