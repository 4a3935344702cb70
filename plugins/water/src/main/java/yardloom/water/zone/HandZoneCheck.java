package yardloom.water.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;
import yardloom.water.drip.DripRun;
import yardloom.water.need.WaterDemand;
import yardloom.water.zone.formula.Zoning;

/**
 * What a zone made by hand leaves out, and whether its beds ask for times as like as those of zones
 * that are put together here.
 */
public final class HandZoneCheck implements Check {
  private static final Source PRACTICE =
      Source.commonPractice("beds of like need share a valve; one valve gives all the same time");

  @Override
  public String id() {
    return "water.hand-zones";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY, WaterDemand.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    List<DripRun> runs = facts.all(DripRun.KEY);
    Set<String> watered = new TreeSet<>();
    runs.forEach(r -> watered.add(r.bed().name()));
    for (Attributes.Entry<HandZone> zone : plan.attributes().all(HandZone.KEY)) {
      for (String name : zone.value().names()) {
        if (!watered.contains(name)) {
          found.add(
              Finding.of(
                      id(),
                      Severity.WARNING,
                      "nothing with dripline is called '"
                          + name
                          + "', so this zone leaves it out."
                          + Nearest.hint(name, watered),
                      "write the name as its bed or tree has it, and lay dripline there",
                      PRACTICE)
                  .at(zone.place()));
        }
      }
      unlike(zone, runs, facts.all(WaterDemand.KEY)).ifPresent(found::add);
    }
    return found;
  }

  /** Of the beds of a zone the one that asks for the least time, if that is much less. */
  private Optional<Finding> unlike(
      Attributes.Entry<HandZone> zone, List<DripRun> runs, List<WaterDemand> demands) {
    DripRun most = null;
    DripRun least = null;
    for (DripRun run : runs) {
      if (zone.value().names().contains(run.bed().name())) {
        double hours = PeakNeed.hours(run, demands);
        most = most == null || hours > PeakNeed.hours(most, demands) ? run : most;
        least = least == null || hours < PeakNeed.hours(least, demands) ? run : least;
      }
    }
    if (most == null) {
      return Optional.empty();
    }
    double share = PeakNeed.hours(least, demands) / PeakNeed.hours(most, demands);
    // Where nothing is known of the need there is nothing to compare.
    if (!(share < Zoning.LIKE)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
                id(),
                Severity.NOTE,
                String.format(
                    Locale.ROOT,
                    "in this zone %s asks for %.0f %% of the time that %s asks for, and gets all of"
                        + " it",
                    least.bed().name(),
                    100 * share,
                    most.bed().name()),
                "give it a zone of its own, or outlets of less flow or farther apart",
                PRACTICE)
            .at(zone.place()));
  }
}
