package yardloom.water.line;

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
import yardloom.water.zone.Zone;

/** Which fitting stands where, zone by zone; together those of the parts list. */
public final class FittingTable implements TableMaker {
  @Override
  public String id() {
    return "fittings";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY, ZoneLine.KEY, DripRun.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Fittings by zone, where they stand")
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.of("tees", "Tees of pipe", Measure.COUNT))
            .column(Column.text("places", "They stand"))
            .column(Column.of("elbows", "Elbows of pipe", Measure.COUNT))
            .column(Column.of("reducers", "Reducers", Measure.COUNT))
            .column(Column.of("bed-tees", "Tees in beds", Measure.COUNT))
            .column(Column.of("bed-elbows", "Elbows in beds", Measure.COUNT))
            .column(Column.of("couplings", "Couplings to one row", Measure.COUNT))
            .column(Column.of("caps", "Flush caps", Measure.COUNT));
    for (ZoneLine line : facts.all(ZoneLine.KEY)) {
      LineFittings its = LineFittings.of(line, Zone.of(line.number(), facts).runs(facts));
      table.row(
          Cell.number(line.number()),
          Cell.number(its.tees()),
          its.places().isEmpty() ? Cell.BLANK : Cell.text(String.join("; ", its.places())),
          Cell.number(its.elbows()),
          Cell.number(its.reducers()),
          Cell.number(its.bedTees()),
          Cell.number(its.bedElbows()),
          Cell.number(its.couplings()),
          Cell.number(its.caps()));
    }
    if (!facts.all(ZoneLine.KEY).isEmpty()) {
      table.note(
          "Pipe: elbows at the bends that are drawn, reducers behind a tee. Beds: a tee where a"
              + " header passes a row or the pipe comes in, an elbow at a header's last row, a cap at"
              + " each row's far end. In all as in the parts list.");
    }
    return table.build();
  }
}
