package yardloom.work.own;

import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.work.labour.OwnItem;

/** Gives the bill the lines of the plan's own items, ordered as they are counted. */
public final class OwnBillCalculator implements Calculator {
  @Override
  public String id() {
    return "work.own-bill";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (OwnItem item : OwnItem.now(plan)) {
      if (item.bought()) {
        out.give(
            YardFacts.BILL,
            new BillLine(
                BillGroup.OWN,
                item.phase(),
                item.name(),
                item.of(plan),
                Optional.empty(),
                item.amount(),
                item.amount(),
                "none: ordered as counted"));
      }
    }
  }
}
