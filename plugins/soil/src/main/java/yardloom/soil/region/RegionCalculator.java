package yardloom.soil.region;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.region.Region;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;

/** Gives the region that the yard lies in, if a regional file names it. */
public final class RegionCalculator implements Calculator {
  /** On the plan: the region that it lies in. */
  public static final AttributeKey<Region> KEY = new AttributeKey<>("soil.region", Region.class);

  @Override
  public String id() {
    return "soil.region";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.attributes().get(KEY).ifPresent(r -> out.give(YardFacts.REGION, r));
  }
}
