package yardloom.work.labour;

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
    WorkSettings.of(plan).start().ifPresent(start -> out.give(YardFacts.WORK_START, start));
  }
}
