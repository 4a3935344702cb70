package yardloom.sun.neighbour;

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

/**
 * Says which beds lose season's sun to each thing that the plan proposes. Silent below {@link
 * NeighbourCheck#NOTABLE_HOURS} a day.
 */
public final class ProposedCheck implements Check {
  @Override
  public String id() {
    return "sun.proposed";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(LostSun.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return facts.find(LostSun.KEY).map(LostSun::beds).orElse(List.of()).stream()
        .filter(lost -> lost.lost() >= NeighbourCheck.NOTABLE_HOURS)
        .map(this::finding)
        .toList();
  }

  private Finding finding(LostSun.OfBed lost) {
    return Finding.of(
            id(),
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "%s would take %.1f h of direct sun a day of the season from it (%.1f h without"
                    + " it, %.1f h with it)",
                lost.by(),
                lost.lost(),
                lost.without(),
                lost.with()),
            "move it or keep it lower, or give the bed plants for less sun",
            Source.commonPractice("shade of what is new on beds"))
        .about(lost.bed().id(), lost.bed().place());
  }
}
