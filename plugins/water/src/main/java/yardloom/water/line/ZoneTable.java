package yardloom.water.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.drip.DripRun;
import yardloom.water.head.Supply;
import yardloom.water.need.WaterDemand;
import yardloom.water.zone.Zone;

/** Which beds are watered together, and for how long. */
public final class ZoneTable implements TableMaker {
  @Override
  public String id() {
    return "zones";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY, ZoneLine.KEY, BedHydraulics.KEY, DripRun.KEY, WaterDemand.KEY);
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
            .column(Column.text("light", "Light"))
            .column(Column.of("flow", "Flow", Measure.FLOW))
            .column(Column.of("supply", "Supply", Measure.FLOW))
            .column(Column.of("behind", "Pressure behind the valve", Measure.PRESSURE))
            .column(Column.of("least", "Least pressure", Measure.PRESSURE))
            .column(Column.of("variation", "Flow variation", Measure.PERCENT))
            .column(Column.text("binding", "Widths of pipe held by"))
            .column(Column.of("peak-hours", "Weekly run time at peak", Measure.HOURS));
    List<Zone> zones = facts.all(Zone.KEY);
    for (Zone zone : zones) {
      ZoneLine line =
          facts.all(ZoneLine.KEY).stream()
              .filter(l -> l.number() == zone.number())
              .findFirst()
              .orElseThrow();
      table.row(
          Cell.number(zone.number()),
          Cell.text(zone.names()),
          zone.light().isEmpty() ? Cell.BLANK : Cell.text(zone.light()),
          Cell.of(line.flow()),
          Supply.isByHeight(plan) ? Cell.text("by its height") : Cell.of(zone.limit()),
          Cell.of(line.behind()),
          Cell.of(line.least()),
          Cell.of(line.variation()),
          line.runs().isEmpty() ? Cell.BLANK : Cell.text(line.binding()),
          longest(zone, facts).map(Cell::of).orElse(Cell.BLANK));
    }
    if (!zones.isEmpty()) {
      if (Zone.areByHand(plan)) {
        table.note("The first zones are as the plan makes them by hand.");
      }
      table.note(
          "A zone runs as long as its thirstiest bed asks; beds that ask for less than 70 percent"
              + " of that, and beds of another class of light, are in another zone. Supply: "
              + supply(plan, zones.get(0).limit())
              + ". Pressure, flow: the whole zone as one network from the "
              + (Supply.isTank(plan) ? "tank" : "tap")
              + " to every outlet, on"
              + " the ground's levels where they are given."
              + (Supply.isTank(plan) ? " All for the tank half full." : ""));
    }
    return table.build();
  }

  /** From a tank the line is not the limit: what its height drives is below what a line carries. */
  private static String supply(Plan plan, Derived<Flow> limit) {
    if (!Supply.isByHeight(plan)) {
      return limit.source().cite();
    }
    Flow line = limit.value();
    return "the tank's height sets what flows, see 'zones by the level in the tank'; beds share a"
        + " zone only up to "
        + Say.of(Measure.FLOW, line, plan.info().units())
        + " from a full tank, what half-inch line carries (rule of thumb)";
  }

  /** That of its thirstiest bed. */
  private static Optional<Derived<TimeSpan>> longest(Zone zone, Facts facts) {
    List<WaterDemand> demands = facts.all(WaterDemand.KEY);
    return zone.runs(facts).stream()
        .flatMap(run -> PeakWatering.of(run, BedHydraulics.of(run.bed(), facts), demands).stream())
        .map(PeakWatering::weekly)
        .max(Comparator.comparing(Derived::value));
  }
}
