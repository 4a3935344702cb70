package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
                HeatLimits.of(plant)
                    .filter(limit -> hottest.get().compareTo(limit.day()) >= 0)
                    .ifPresent(
                        limit -> found.add(first.on(tooHot(plan, plant, limit, hottest.get())))));
    return found;
  }

  private Finding tooHot(Plan plan, String plant, HeatLimits.Limit limit, Temperature hottest) {
    return Finding.of(
        id(),
        Severity.NOTE,
        plant
            + " suffers where days reach "
            + both(plan, limit.day())
            + "; those of the hottest month here reach "
            + both(plan, hottest)
            + " on the mean",
        "give it shade in the afternoon, or a kind that bears before or after the heat",
        limit.source());
  }

  private static String both(Plan plan, Temperature t) {
    return plan.info()
        .units()
        .both(
            String.format(Locale.ROOT, "%.0f °F", t.fahrenheit()),
            String.format(Locale.ROOT, "%.0f °C", t.celsius()));
  }
}
