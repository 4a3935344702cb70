package yardloom.materials.sourcing;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives the shipped ways to come by materials. */
public final class SupplyCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.supplies";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SUPPLIES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    SourcingData.all().forEach(s -> out.give(YardFacts.SUPPLIES, s));
  }
}
