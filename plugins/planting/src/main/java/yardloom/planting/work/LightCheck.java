package yardloom.planting.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SunHours;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.TimeSpan;

/**
 * Compares the sun that a bed has in the growing season with what its plants ask for; silent
 * without sun hours.
 */
public final class LightCheck implements Check {
  @Override
  public String id() {
    return "planting.light";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SUN_HOURS, YardFacts.CLIMATE);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<SunHours> sun = facts.find(YardFacts.SUN_HOURS);
    Optional<ClimateNormals> climate = facts.find(YardFacts.CLIMATE);
    for (Planting p : Planting.of(plan)) {
      Optional<List<TimeSpan>> months = sun.flatMap(s -> s.of(p.bed().id()));
      List<Integer> season = StandCalculator.season(plan, climate, p.plant());
      if (months.isEmpty() || season.isEmpty()) {
        continue;
      }
      double has =
          season.stream().mapToDouble(m -> months.get().get(m).hours()).average().orElseThrow();
      double asks = p.plant().light().hours();
      if (has < asks) {
        found.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    String.format(
                        Locale.ROOT,
                        "%s asks for %.0f h of direct sun a day, the bed has %.1f h in the growing"
                            + " season",
                        p.plant().name(),
                        asks,
                        has),
                    "choose a plant for less sun, or another bed",
                    p.plant().lightSource())
                .about(p.bed().id(), p.place()));
      }
    }
    return found;
  }
}
