package yardloom.water.line;

import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Pressure and flow of each outlet, row by row. */
public final class OutletTable implements TableMaker {
  @Override
  public String id() {
    return "outlets";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(BedOutlets.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Pressure and flow of each outlet")
            .column(Column.text("bed", "Bed or tree"))
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.of("row", "Row", Measure.COUNT))
            .column(Column.text("outlets", "Outlets"))
            .column(Column.of("at", "First of them along the row", Measure.LENGTH))
            .column(Column.of("pressure", "Pressure", Measure.PRESSURE))
            .column(Column.of("flow", "Flow of each", Measure.SMALL_FLOW));
    for (BedOutlets bed : facts.all(BedOutlets.KEY)) {
      for (BedOutlets.Group group : bed.groups()) {
        table.row(
            Cell.text(bed.bed().name()),
            Cell.number(bed.zone()),
            Cell.number(group.row()),
            Cell.text(
                group.first() == group.last()
                    ? "" + group.first()
                    : group.first() + " to " + group.last()),
            Cell.of(group.at()),
            Cell.of(group.pressure()),
            Cell.of(group.flow()));
      }
    }
    if (!facts.all(BedOutlets.KEY).isEmpty()) {
      table.note(
          "While the whole zone runs. Outlets are counted from the start of their row, where the"
              + " header or the pipe comes in. Told together: outlets that follow each other and"
              + " differ from the first by at most 1 percent of pressure; its figures stand for"
              + " them.");
    }
    return table.build();
  }
}
