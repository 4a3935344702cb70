package yardloom.water.timetable;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;

/** Says which waterings do not go into a night, although all zones take turns in it. */
public final class NightCheck implements Check {
  private static final Source NIGHT =
      Source.commonPractice(
          "watering from the evening on, over before sunrise, loses least to sun and wind");

  @Override
  public String id() {
    return "water.night";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CrowdedNight.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return facts.all(CrowdedNight.KEY).stream().map(this::finding).toList();
  }

  private Finding finding(CrowdedNight night) {
    return Finding.of(
        id(),
        Severity.WARNING,
        String.format(
            Locale.ROOT,
            "%s the zones that are due in one night take %.1f hours, the night has %.1f: by the"
                + " timetable some of them run by day",
            night.when(),
            night.takes().hours(),
            night.has().hours()),
        "run half of the zones on the days between, use outlets of less flow where the soil rests"
            + " between turns, or give more beds to one valve where the supply allows it",
        NIGHT);
  }
}
