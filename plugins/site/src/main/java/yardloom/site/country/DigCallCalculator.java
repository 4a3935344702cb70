package yardloom.site.country;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives whom to ask for marks of buried lines, where that is known. */
public final class DigCallCalculator implements Calculator {
  @Override
  public String id() {
    return "site.dig-call";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.DIG_CALL);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    DigCalls.of(plan).ifPresent(call -> out.give(YardFacts.DIG_CALL, call));
  }
}
