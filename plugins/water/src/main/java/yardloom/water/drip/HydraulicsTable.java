package yardloom.water.drip;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** What the tubes of each bed take from pressure and flow, and how long a row may be. */
public final class HydraulicsTable implements TableMaker {
  private static final String ID = "drip-hydraulics";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Pressure and flow of dripline")
            .column(Column.text("bed", "Bed"))
            .column(Column.of("rated", "Rated flow", Measure.FLOW))
            .column(Column.of("flow", "Flow", Measure.FLOW))
            .column(Column.of("least", "Least pressure", Measure.PRESSURE))
            .column(Column.of("variation", "Flow variation", Measure.PERCENT))
            .column(Column.of("low-quarter", "Distribution uniformity", Measure.PERCENT))
            .column(Column.of("design", "Emission uniformity", Measure.PERCENT))
            .column(Column.of("longest-row", "Longest row", Measure.LENGTH))
            .column(Column.of("longest-run", "A row may be", Measure.LENGTH));
    List<DripRun> runs = facts.all(DripRun.KEY);
    for (DripRun run : runs) {
      BedHydraulics solved = run.hydraulics();
      table.row(
          Cell.text(run.bed().name()),
          Cell.of(solved.rated()),
          Cell.of(solved.flow()),
          Cell.of(solved.least()),
          Cell.of(solved.variation()),
          solved.lowQuarter().map(Cell::of).orElse(Cell.BLANK),
          Cell.of(solved.design()),
          Cell.of(solved.longestRow()),
          Cell.of(solved.longestRun()));
    }
    if (!runs.isEmpty()) {
      table.note(
          "Rows on a header fed at its end with 20 psi (138 kPa), at which the outlets are taken to"
              + " give their rated flow; level ground, outlets that do not compensate, tube and"
              + " header of 14.5 mm inside (from memory). A row may be: alone on its feed, with"
              + " outlet flows that differ by at most 10 percent. Distribution uniformity: mean of the"
              + " quarter of outlets that gives least over the mean; emission uniformity: also for"
              + " outlets that differ by 5 percent as they are made (from memory).");
    }
    return table.build();
  }
}
