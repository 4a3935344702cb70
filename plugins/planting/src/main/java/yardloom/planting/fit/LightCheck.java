package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.LightNeed;
import yardloom.facts.SunHours;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;

/** Names beds whose sun does not suit their plants, with hours and class. */
public final class LightCheck implements Check {
  @Override
  public String id() {
    return "planting.light";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SUN_HOURS, YardFacts.LIGHT_NEEDS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Optional<SunHours> sun = facts.find(YardFacts.SUN_HOURS);
    List<Finding> found = new ArrayList<>();
    for (LightNeed need : facts.all(YardFacts.LIGHT_NEEDS)) {
      sun.flatMap(s -> s.of(need.in()))
          .filter(p -> p.season().hours() < need.minHours())
          .ifPresent(p -> found.add(finding(need, p, sun.get())));
    }
    return found;
  }

  private Finding finding(LightNeed need, SunHours.Place place, SunHours sun) {
    return Finding.of(
            id(),
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "%s asks for %.1f h of direct sun a day; this place has %.1f h from %s: %s (scheme"
                    + " %s)",
                need.plant(),
                need.minHours(),
                place.season().hours(),
                sun.season(),
                place.lightClass(),
                sun.scheme()),
            "choose a plant for less sun, or a sunnier place",
            need.source())
        .about(need.in(), need.place());
  }
}
