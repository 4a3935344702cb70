package yardloom.climate.normals;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives the monthly normals that the plan names or states. */
public final class ClimateCalculator implements Calculator {
  @Override
  public String id() {
    return "water.climate";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.attributes()
        .get(NormalsWords.CLIMATE)
        .ifPresent(climate -> out.give(YardFacts.CLIMATE, climate));
  }
}
