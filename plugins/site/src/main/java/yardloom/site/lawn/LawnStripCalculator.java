package yardloom.site.lawn;

import java.util.Set;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Finds the strips of lawn beside beds once for all who speak of them. */
public final class LawnStripCalculator implements Calculator {
  @Override
  public String id() {
    return "site.lawn-strips";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(LawnStrip.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    LawnStrip.of(plan).forEach(strip -> out.give(LawnStrip.FACT, strip));
  }
}
