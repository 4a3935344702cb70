package yardloom.sun.neighbour;

import java.time.Month;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/**
 * Says when what the plan proposes takes direct sun from a neighbour's windows or from beds outside
 * the lot. Silent up to {@link #NOTABLE_HOURS}.
 */
public final class NeighbourCheck implements Check {
  static final double NOTABLE_HOURS = 0.5;

  @Override
  public String id() {
    return "sun.neighbour";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(LostSun.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    return facts.find(LostSun.KEY).map(LostSun::neighbours).orElse(List.of()).stream()
        .filter(lost -> lost.lost() > NOTABLE_HOURS)
        .map(lost -> finding(plan, lost))
        .toList();
  }

  private Finding finding(Plan plan, LostSun.OfNeighbour lost) {
    List<String> by = ProposedWords.proposed(plan).stream().map(ElementId::toString).toList();
    return Finding.of(
            id(),
            Severity.WARNING,
            String.format(
                Locale.ROOT,
                "%s would take %.1f h of direct sun from %s in %s (%.1f h now, %.1f h then, at"
                    + " (%s, %s) %s above ground)",
                String.join(", ", by),
                lost.lost(),
                lost.element().id(),
                Months.fullName(Month.of(lost.month() + 1)),
                lost.now(),
                lost.then(),
                both(plan, lost.at().x()),
                both(plan, lost.at().y()),
                both(plan, lost.above())),
            "move it, keep it lower, or agree with the neighbour; local rules may protect light",
            Source.commonPractice("shade on a neighbour's windows and beds"))
        .about(lost.element().id(), lost.element().place());
  }

  private static String both(Plan plan, Length length) {
    return Say.both(Measure.LENGTH, length, plan.info().units());
  }
}
