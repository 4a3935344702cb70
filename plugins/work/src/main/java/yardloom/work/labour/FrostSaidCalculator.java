package yardloom.work.labour;

import java.util.Set;
import yardloom.facts.FrostSaid;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Passes on the frost days that {@code work} says, so that a plan has one set of them. */
public final class FrostSaidCalculator implements Calculator {
  @Override
  public String id() {
    return "work.frost-said";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.FROST_SAID);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.attributes()
        .get(WorkSettings.KEY)
        .filter(w -> w.lastFrost().isPresent() || w.firstFrost().isPresent())
        .ifPresent(
            w ->
                out.give(
                    YardFacts.FROST_SAID, new FrostSaid(w.lastFrost(), w.firstFrost(), w.place())));
  }
}
