package yardloom.water.drip;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;

/** Whether what is newly planted gets water from the dripline of its bed. */
public final class RowCheck implements Check {
  private static final Source BALL =
      Source.commonPractice("a new plant drinks from its root ball only");

  @Override
  public String id() {
    return "water.drip-rows";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY, YardFacts.SOIL, YardFacts.STANDS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    TableFormat format = TableFormat.of(plan.info());
    List<Finding> found = new ArrayList<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      if (!run.choice().isSingle()) {
        RowPlaces places = RowPlaces.of(plan, run, facts);
        places
            .outOfReach()
            .map(far -> finding(run, far, places.reach().value(), format))
            .ifPresent(found::add);
      }
    }
    return found;
  }

  private Finding finding(DripRun run, RowPlaces.Far far, Length reach, TableFormat format) {
    return Finding.of(
            id(),
            Severity.NOTE,
            far.plant()
                + " stands up to "
                + format.withUnit(Measure.DEPTH, far.from())
                + " from the nearest row of dripline, which wets "
                + format.withUnit(Measure.DEPTH, reach)
                + " to each side",
            "lay the rows closer (`rowSpacing:`), set emitters by the plants (`emitters`), or"
                + " water by hand until the roots have grown to the row",
            BALL)
        .about(run.bed(), run.place());
  }
}
