package yardloom.work.stage;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Passes on the first day of the work, by whose season plants are bought. */
public final class StartSaidCalculator implements Calculator {
  @Override
  public String id() {
    return "work.start-said";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.WORK_START);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Stages.start(plan).ifPresent(start -> out.give(YardFacts.WORK_START, start));
  }
}
