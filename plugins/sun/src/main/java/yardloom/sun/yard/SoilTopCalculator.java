package yardloom.sun.yard;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.SoilTop;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** Gives how high the soil of raised beds lies, as {@code soilTop} says. */
public final class SoilTopCalculator implements Calculator {
  @Override
  public String id() {
    return "sun.soil-tops";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of();
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SOIL_TOPS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      bed.attributes().all(YardWords.BED_HEIGHT).stream()
          .filter(e -> e.value().metres() > 0)
          .findFirst()
          .ifPresent(
              e -> out.give(YardFacts.SOIL_TOPS, new SoilTop(bed.id(), e.value(), e.place())));
    }
  }
}
