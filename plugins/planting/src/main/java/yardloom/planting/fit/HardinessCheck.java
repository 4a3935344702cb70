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
                ColdLimits.of(plant)
                    .filter(limit -> site.get().zone() < limit.coldest())
                    .ifPresent(limit -> found.add(first.on(tender(plant, limit, site.get())))));
    return found;
  }

  private Finding tender(String plant, ColdLimits.Limit limit, Hardiness site) {
    return Finding.of(
        id(),
        Severity.WARNING,
        plant
            + " winters in zone "
            + limit.coldest()
            + " and warmer; this yard lies in zone "
            + site.text()
            + " ("
            + site.source().cite()
            + ")",
        "choose a hardier kind or variety, or grow it in a pot that winters indoors",
        limit.source());
  }
}
