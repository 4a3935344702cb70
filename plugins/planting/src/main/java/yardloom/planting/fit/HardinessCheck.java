package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.suit.rule.ColdRule;

/**
 * Says which plants the winter of the site's hardiness zone kills. Each kind is named once, where
 * it is first planted.
 */
public final class HardinessCheck implements Check {
  @Override
  public String id() {
    return "planting.hardiness";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.HARDINESS, PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<Hardiness> site = facts.find(YardFacts.HARDINESS);
    if (site.isEmpty()) {
      return found;
    }
    FirstPlanted.of(facts.get(PlantPlaces.KEY))
        .forEach(
            (plant, first) ->
                ColdRule.judge(first.plant(), site.get())
                    .ifPresent(
                        reason ->
                            found.add(
                                first.on(Reasons.finding(id(), Severity.WARNING, plant, reason)))));
    return found;
  }
}
