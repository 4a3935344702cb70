package yardloom.work.phase;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives the days on which the crew plants: that of the phase, and more where kinds need them. */
public final class VisitCalculator implements Calculator {
  @Override
  public String id() {
    return "work.planting-visits";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PhaseTime.FACT);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(PlantingVisit.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    in.all(PhaseTime.FACT).stream()
        .filter(p -> p.phase().id() == WorkPhase.PLANT)
        .flatMap(p -> p.start().stream())
        .findFirst()
        .ifPresent(
            start ->
                PlantingVisit.of(in.all(YardFacts.PLANTING_WINDOWS), start)
                    .forEach(visit -> out.give(PlantingVisit.FACT, visit)));
  }
}
