package yardloom.materials.load;

import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkDensity;
import yardloom.facts.mulch.Material;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;

/** Gives what bulk material weighs, and the rates of bulk that plan and region say. */
public final class DensityCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.densities";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BULK_DENSITIES, YardFacts.LOCAL_RATES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    BulkRates rates = BulkRates.of(plan, in.find(YardFacts.REGION));
    for (Material material : List.of(Material.COMPOST, Material.WOOD_CHIPS)) {
      out.give(
          YardFacts.BULK_DENSITIES,
          new BulkDensity(material, rates.poundsPerCubicYard(material.title())));
    }
    plan.attributes().all(BulkRates.KEY).forEach(e -> out.give(YardFacts.LOCAL_RATES, e.value()));
  }
}
