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
import yardloom.planting.suit.rule.LightRule;

/**
 * Names beds whose sun does not suit their plants, with hours and class. What full sun and shade
 * are the plan's scheme of light says; half a day is four hours of direct sun.
 *
 * <p>References: [1] Cornell Cooperative Extension Cayuga, Eco Talk, 3 November 2022 (hazelnut, at
 * least four hours of direct sun).
 */
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
          .filter(p -> !LightRule.suits(need.amount(), p, sun.get()))
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
                "%s asks for %s; this place has %.1f h of direct sun a day from %s: %s (scheme %s)",
                need.plant(),
                LightRule.asks(need.amount()),
                place.season().hours(),
                sun.season(),
                place.lightClass(),
                sun.scheme()),
            need.amount() == LightNeed.Amount.PART_SHADE_OR_SHADE
                ? "choose a plant for full sun, or a shadier place"
                : "choose a plant for less sun, or a sunnier place",
            need.source())
        .about(need.in(), need.place());
  }
}
