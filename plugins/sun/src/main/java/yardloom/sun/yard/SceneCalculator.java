package yardloom.sun.yard;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/**
 * Gives the scene that all of sun looks at, so that it is built once. Gives nothing without a site.
 */
public final class SceneCalculator implements Calculator {
  @Override
  public String id() {
    return "sun.scene";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.RADIATION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardSun.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.site()
        .ifPresent(
            site ->
                out.give(
                    YardSun.KEY,
                    new YardSun(
                        plan, site, in.all(YardFacts.OBSTACLES), in.find(YardFacts.RADIATION))));
  }
}
