package yardloom.planting.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;

/** Flags kinds that take longer to ripen than the season between the usual frosts lasts. */
public final class ShortSeasonCheck implements Check {
  @Override
  public String id() {
    return "planting.short-season";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY, YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<KindWindows> windows = KindWindows.of(facts);
    if (windows.isPresent()) {
      for (Plant plant : facts.get(PlantPlaces.KEY).toPlant().values()) {
        windows
            .get()
            .tooShort(plant)
            .ifPresent(rule -> found.add(finding(plant, rule, windows.get().shortBy(rule))));
      }
    }
    return found;
  }

  private Finding finding(Plant plant, PlantingRules.Rule rule, int days) {
    return Finding.of(
        id(),
        Severity.NOTE,
        plant.name()
            + " ripens "
            + days
            + " days after the first usual frost if it is planted on its first day; its crop takes "
            + plant.draw().crop().stages().map(s -> s.total()).orElse(0)
            + " days by the table of crop stages",
        "take an early variety, set out large plants, or cover the bed in spring and fall",
        rule.source());
  }
}
