package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.suit.rule.HeatRule;

/** Says which plants suffer in the hottest month of the climate, whatever its winters are like. */
public final class HeatCheck implements Check {
  @Override
  public String id() {
    return "planting.heat";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.CLIMATE, PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<Temperature> hottest =
        facts.find(YardFacts.CLIMATE).flatMap(ClimateNormals::hottestDays);
    if (hottest.isEmpty()) {
      return found;
    }
    FirstPlanted.of(facts.get(PlantPlaces.KEY))
        .forEach(
            (plant, first) ->
                HeatRule.judge(plan, first.plant(), hottest.get())
                    .ifPresent(
                        reason ->
                            found.add(
                                first.on(Reasons.finding(id(), Severity.NOTE, plant, reason)))));
    return found;
  }
}
