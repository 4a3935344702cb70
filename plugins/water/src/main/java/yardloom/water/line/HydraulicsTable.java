package yardloom.water.line;

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
import yardloom.water.drip.DripRun;

/** What the tubes of each bed take from pressure and flow, and how long a row may be. */
public final class HydraulicsTable implements TableMaker {
  private static final String ID = "drip-hydraulics";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(BedHydraulics.KEY, DripRun.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Pressure and flow of dripline")
            .column(Column.text("bed", "Bed"))
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.of("rated", "Rated flow", Measure.FLOW))
            .column(Column.of("flow", "Flow", Measure.FLOW))
            .column(Column.of("inlet", "Pressure at the feed", Measure.PRESSURE))
            .column(Column.of("least", "Least pressure", Measure.PRESSURE))
            .column(Column.of("variation", "Flow variation", Measure.PERCENT))
            .column(Column.of("low-quarter", "Distribution uniformity", Measure.PERCENT))
            .column(Column.of("design", "Emission uniformity", Measure.PERCENT))
            .column(Column.of("allowed-drop", "Pressure may fall by", Measure.PERCENT))
            .column(Column.of("longest-row", "Longest row", Measure.LENGTH))
            .column(Column.of("longest-run", "A row may be", Measure.LENGTH));
    List<DripRun> runs = facts.all(DripRun.KEY);
    for (DripRun run : runs) {
      BedHydraulics solved = BedHydraulics.of(run.bed(), facts);
      table.row(
          Cell.text(run.bed().name()),
          Cell.number(solved.zone()),
          Cell.of(run.totals().rated()),
          Cell.of(solved.outflow().flow()),
          Cell.of(solved.pressures().inlet()),
          Cell.of(solved.pressures().least()),
          Cell.of(solved.evenness().variation()),
          solved.evenness().lowQuarter().map(Cell::of).orElse(Cell.BLANK),
          Cell.of(solved.evenness().design()),
          Cell.of(solved.rows().allowedDrop()),
          Cell.of(solved.rows().longest()),
          Cell.of(solved.rows().limit()));
    }
    if (!runs.isEmpty()) {
      table.note(
          "While the whole zone runs, from the tap to every outlet. Outlets follow their exponent"
              + " of pressure (0.5 unless the plan says otherwise, from memory). Pressure may fall"
              + " by: along a row, before its flow has fallen by 10 percent. A row may be: alone on"
              + " its feed, level, with flows that differ by at most 10 percent. Distribution"
              + " uniformity: mean of the quarter of outlets that gives least over the mean;"
              + " emission uniformity: also for outlets that differ by 5 percent as they are made"
              + " (from memory).");
    }
    return table.build();
  }
}
