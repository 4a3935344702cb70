package yardloom.water.zone;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Which beds are watered together, and for how long. */
public final class ZoneTable implements TableMaker {
  @Override
  public String id() {
    return "zones";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Watering zones")
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.text("beds", "Beds"))
            .column(Column.of("flow", "Flow", Measure.FLOW))
            .column(Column.of("supply", "Supply", Measure.FLOW))
            .column(Column.of("peak-hours", "Weekly run time at peak", Measure.HOURS));
    List<Zone> zones = facts.all(Zone.KEY);
    for (Zone zone : zones) {
      table.row(
          Cell.number(zone.number()),
          Cell.text(NameRuns.text(zone.beds().stream().map(ElementId::name).toList())),
          Cell.of(zone.flow()),
          Cell.of(zone.limit()),
          zone.weekly().map(Cell::of).orElse(Cell.BLANK));
    }
    if (!zones.isEmpty()) {
      table.note(
          "A zone runs as long as its thirstiest bed asks; beds that ask for less than 70 percent"
              + " of that are in another zone. Supply: "
              + zones.get(0).limit().source().cite()
              + ".");
    }
    return table.build();
  }
}
