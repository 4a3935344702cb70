package yardloom.planting.placing;

import java.util.Set;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Lays the plants of the plan out; a plan without any has an empty layout. */
public final class LayoutCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.layout";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    out.give(PlantPlaces.KEY, new PlantPlaces(Planting.of(plan), Planting.specimens(plan)));
  }
}
