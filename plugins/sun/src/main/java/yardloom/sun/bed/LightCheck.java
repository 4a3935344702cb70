package yardloom.sun.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.LightNeed;
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
    return "sun.light";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(BedSuns.KEY, YardFacts.LIGHT_NEEDS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<BedSuns> suns = facts.find(BedSuns.KEY);
    if (suns.isEmpty()) {
      return found;
    }
    for (LightNeed need : facts.all(YardFacts.LIGHT_NEEDS)) {
      suns.get().beds().stream()
          .filter(b -> b.bed().equals(Optional.of(need.in())))
          .filter(b -> b.seasonHours() < need.minHours())
          .forEach(b -> found.add(finding(need, b, suns.get())));
    }
    return found;
  }

  private Finding finding(LightNeed need, BedSun bed, BedSuns suns) {
    return Finding.of(
            id(),
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "%s asks for %.1f h of direct sun a day; this place has %.1f h from %s: %s (scheme"
                    + " '%s': %s)",
                need.plant(),
                need.minHours(),
                bed.seasonHours(),
                suns.seasonText(),
                bed.lightClass().name(),
                suns.scheme().name(),
                suns.scheme().text()),
            "choose a plant for less sun, or a sunnier place",
            need.source())
        .about(need.in(), need.place());
  }
}
