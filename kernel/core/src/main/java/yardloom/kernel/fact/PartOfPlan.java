package yardloom.kernel.fact;

import java.util.List;
import yardloom.kernel.plan.Plan;

/**
 * A part of a plan, with its facts: what they are while nothing but this part is made.
 *
 * @param name how tables call it
 * @param plan the same yard, with all other parts done or still to come
 */
public record PartOfPlan(String name, Plan plan, Facts facts) {
  /** The parts in the order in which they are made; none for a plan that is made at once. */
  public static final FactKey<PartOfPlan> FACT =
      FactKey.many("kernel.parts", PartOfPlan.class).called("parts of the plan");

  /** The parts, or the whole as the only one. */
  public static List<PartOfPlan> of(Plan plan, Facts facts) {
    List<PartOfPlan> parts = facts.all(FACT);
    return parts.isEmpty() ? List.of(new PartOfPlan("", plan, facts)) : parts;
  }
}
