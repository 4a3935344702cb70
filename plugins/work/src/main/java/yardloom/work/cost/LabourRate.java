package yardloom.work.cost;

import yardloom.facts.region.Spread;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Money;

/**
 * What an hour of labour is billed at: wage × (1 + overhead) × (1 + markup).
 *
 * <p>References: arithmetic; no publication is needed.
 *
 * @param wage paid to one person for an hour
 * @param overhead share of the wage
 * @param markup share of wage and overhead
 */
public record LabourRate(Money wage, double overhead, double markup, Derived<Money> billed) {
  /** On the plan: what it says. */
  public static final AttributeKey<LabourRate> KEY =
      new AttributeKey<>("work.labour-rate", LabourRate.class);

  private static final Source SOURCE = Source.plan("labour rate of the plan");

  static LabourRate of(Money wage, double overhead, double markup, PlanScope plan) {
    if (!(wage.amount() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, plan.place(), "a wage is more than 0, got " + wage.amount());
    }
    return new LabourRate(
        wage,
        overhead,
        markup,
        Derived.by("wage × (1 + overhead) × (1 + markup)", SOURCE)
            .from("wage", wage, plan.place())
            .from("overhead", overhead, plan.place())
            .from("markup", markup, plan.place())
            .gives(wage.times((1 + overhead) * (1 + markup))));
  }

  /** The price of an hour of labour. */
  Price price() {
    double perHour = billed.value().amount();
    return new Price("labour", "h", new Spread(perHour, perHour, perHour, "price", SOURCE), false);
  }
}
