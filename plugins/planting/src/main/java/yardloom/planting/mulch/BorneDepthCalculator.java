package yardloom.planting.mulch;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BorneDepth;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** Gives the depth of chips that each kind of a bed bears, as the catalogue has it. */
public final class BorneDepthCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.borne-depths";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BORNE_DEPTHS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    for (Planting p : in.get(PlantPlaces.KEY).plantings()) {
      Plant.Borne borne = p.plant().mulch();
      out.give(
          YardFacts.BORNE_DEPTHS,
          new BorneDepth(p.bed().id(), p.plant().name(), borne.most(), borne.source()));
    }
  }
}
