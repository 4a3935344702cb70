package yardloom.materials.surface;

import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PlantedLater;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives the surfaces of the plan. */
public final class SurfaceCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.surfaces";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.BORNE_DEPTHS, YardFacts.DRIPLINES, YardFacts.PLANTED_LATER);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    SurfaceLayout.of(
            plan,
            in.all(YardFacts.BORNE_DEPTHS),
            in.all(YardFacts.DRIPLINES),
            in.all(YardFacts.PLANTED_LATER).stream()
                .map(PlantedLater::in)
                .collect(Collectors.toSet()))
        .forEach(s -> out.give(YardFacts.SURFACES, s));
  }
}
