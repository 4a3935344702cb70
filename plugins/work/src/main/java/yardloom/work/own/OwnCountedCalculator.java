package yardloom.work.own;

import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.work.labour.OwnItem;

/** Gives the elements that items or tasks of the plan's own are for: nobody else counts them. */
public final class OwnCountedCalculator implements Calculator {
  @Override
  public String id() {
    return "work.own-counted";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.OWN_COUNTED);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Set<ElementId> counted = new TreeSet<>();
    plan.attributes().all(OwnItem.KEY).forEach(e -> e.value().of(plan).ifPresent(counted::add));
    counted.forEach(id -> out.give(YardFacts.OWN_COUNTED, id));
  }
}
