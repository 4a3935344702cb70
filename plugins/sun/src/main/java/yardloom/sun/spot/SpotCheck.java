package yardloom.sun.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;

/** Says when no free ground is large or sunny enough for what the plan looks for. */
public final class SpotCheck implements Check {
  @Override
  public String id() {
    return "sun.spot";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SunSpots.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    Optional<SunSpots> spots = facts.find(SunSpots.KEY);
    for (SunSpots.Search s : spots.map(SunSpots::searches).orElse(List.of())) {
      String wanted = Say.both(Measure.AREA, s.area(), plan.info().units()) + " for " + s.crop();
      if (s.found().isEmpty()) {
        found.add(
            finding(
                s,
                "no connected free ground of " + wanted + " is left",
                "look for less ground, or free some"));
      } else if (s.found().get(0).meanHours() < s.wantedHours()) {
        found.add(
            finding(
                s,
                String.format(
                    Locale.ROOT,
                    "the sunniest free ground of %s has %.1f h of direct sun a day in the season;"
                        + " %.1f h are wanted",
                    wanted,
                    s.found().get(0).meanHours(),
                    s.wantedHours()),
                "choose a crop for less sun, or thin what shades the ground"));
      }
    }
    return found;
  }

  private Finding finding(SunSpots.Search search, String text, String advice) {
    return Finding.of(id(), Severity.WARNING, text, advice, Source.plan("bestSpot"))
        .at(search.place());
  }
}
