package yardloom.water.timetable;

import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.head.Supply;
import yardloom.water.line.ZoneLine;
import yardloom.water.zone.Zone;

/** What the installer measures and writes down beside what the plan expects, zone by zone. */
public final class AsBuiltTable implements TableMaker {
  private static final String BLANK_TO_FILL = "________";

  @Override
  public String id() {
    return "as-built";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY, ZoneLine.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "As built: fill in when the zones run")
            .column(Column.of("zone", "Zone", Measure.COUNT))
            .column(Column.text("beds", "Beds"))
            .column(Column.of("flow", "Flow, planned", Measure.FLOW))
            .column(Column.text("flow-read", "Read"))
            .column(Column.of("end", "Least pressure, planned", Measure.PRESSURE))
            .column(Column.text("end-read", "Read"))
            .column(Column.text("valve", "Valve at"))
            .column(Column.text("changed", "Laid otherwise"))
            .column(Column.text("day", "Day, by"));
    for (ZoneLine line : facts.all(ZoneLine.KEY)) {
      table.row(
          Cell.number(line.number()),
          Cell.text(Zone.of(line.number(), facts).names()),
          Cell.of(line.flow()),
          Cell.text(BLANK_TO_FILL),
          Cell.of(line.least()),
          Cell.text(BLANK_TO_FILL),
          Cell.text(BLANK_TO_FILL),
          Cell.text(BLANK_TO_FILL + BLANK_TO_FILL),
          Cell.text(BLANK_TO_FILL));
    }
    if (!facts.all(ZoneLine.KEY).isEmpty()) {
      table.note(
          (Supply.isTank(plan)
                  ? "Flow: by how far the tank sinks in an hour, from half full. Pressure:"
                  : "Flow: by the water meter over ten minutes. Pressure:")
              + " a gauge in place of the flush cap nearest the zone's triangle on the plan. More"
              + " than a tenth off: look for a leak, a closed valve or a full filter.");
    }
    return table.build();
  }
}
