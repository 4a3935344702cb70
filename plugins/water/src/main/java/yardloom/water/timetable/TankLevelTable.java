package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/** How long zones run at several levels of the tank that feeds them, and at which they stop. */
public final class TankLevelTable implements TableMaker {
  private static final Source SAME = Source.commonPractice("the same water at another flow");

  @Override
  public String id() {
    return "tank-levels";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TankZone.KEY, ZoneTimes.KEY, Zone.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Zones by the level in the tank")
            .column(Column.text("level", "Tank is"))
            .column(Column.of("water", "Water stands", Measure.DEPTH))
            .column(Column.of("behind", "Pressure behind the valve", Measure.PRESSURE))
            .column(Column.of("flow", "Flow", Measure.FLOW))
            .column(Column.of("variation", "Outlets differ by", Measure.PERCENT))
            .column(Column.of("times", "Times the minutes of the timetable", Measure.RATIO))
            .column(Column.of("minutes", "Minutes in all at peak", Measure.COUNT))
            .column(Column.of("sinks", "Tank then sinks by", Measure.DEPTH));
    List<TankZone> zones = facts.all(TankZone.KEY);
    Map<String, List<Integer>> stops = new LinkedHashMap<>();
    for (TankZone zone : zones) {
      Optional<ZoneTimes.Month> peak = peak(zone.number(), facts);
      table.heading(
          TankChange.heading(zone.number(), facts)
              + peak.map(p -> "; peak in " + Months.name(p.month())).orElse(""));
      for (TankZone.Level level : levels(zone)) {
        row(table, zone, level, peak);
      }
      stops
          .computeIfAbsent(
              zone.stop().isPresent()
                  ? "close the valve when " + zone.limit()
                  : "not well even from a full tank, " + zone.limit(),
              k -> new ArrayList<>())
          .add(zone.number());
    }
    stops.forEach((what, of) -> table.note(said(of, zones.size()) + ": " + what + "."));
    if (!zones.isEmpty()) {
      table.note(
          "The timetable is worked out for the tank half full; look at the water before you open"
              + " the valve and run so many times its minutes. Below the stop level: close the"
              + " valve and fill the tank, else some plants get little.");
    }
    return table.build();
  }

  private static String said(List<Integer> zones, int all) {
    if (zones.size() == all && all > 1) {
      return "All zones";
    }
    return (zones.size() == 1 ? "Zone " : "Zones ")
        + zones.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }

  private static boolean isStop(TankZone zone, TankZone.Level level) {
    return zone.stop().filter(level::equals).isPresent();
  }

  /** From full to empty. */
  private static List<TankZone.Level> levels(TankZone zone) {
    List<TankZone.Level> all = new ArrayList<>(zone.levels());
    zone.stop().filter(s -> !all.contains(s)).ifPresent(all::add);
    all.sort(Comparator.comparing(TankZone.Level::water, Comparator.reverseOrder()));
    return all;
  }

  /** The month that asks the zone for most water on one day. */
  static Optional<ZoneTimes.Month> peak(int zone, Facts facts) {
    return facts.all(ZoneTimes.KEY).stream()
        .filter(t -> t.zone() == zone)
        .flatMap(t -> t.months().stream())
        .max(Comparator.comparingInt(m -> m.program().dayMinutes()));
  }

  /** What one watering in that month takes. */
  static Derived<Volume> watering(TankZone zone, ZoneTimes.Month month) {
    Flow flow = zone.half().flow().value();
    TimeSpan time = TimeSpan.minutes(month.program().dayMinutes());
    return Derived.by("flow, tank half full × time of a watering", SAME)
        .from("flow, tank half full", zone.half().flow())
        .from("time of a watering", time)
        .gives(flow.during(time));
  }

  private static void row(
      Table.Builder table, TankZone zone, TankZone.Level level, Optional<ZoneTimes.Month> peak) {
    boolean isDry = level.flow().value().cubicMetresPerSecond() <= 0;
    double times = isDry ? Double.NaN : zone.half().flow().value().ratioTo(level.flow().value());
    table.row(
        Cell.text(isStop(zone, level) ? level.name() + ": stop" : level.name()),
        Cell.of(level.water()),
        Cell.of(level.behind()),
        Cell.of(level.flow()),
        Cell.of(level.variation()),
        isDry
            ? Cell.text("nothing runs")
            : Cell.of(
                Derived.by("flow of the half full tank / flow now", SAME)
                    .from("flow of the half full tank", zone.half().flow())
                    .from("flow now", level.flow())
                    .gives(times)),
        isDry
            ? Cell.BLANK
            : peak.map(p -> Cell.of(minutes(zone, level, p, times))).orElse(Cell.BLANK),
        peak.map(p -> Cell.of(sinks(zone, p))).orElse(Cell.BLANK));
  }

  private static Derived<Integer> minutes(
      TankZone zone, TankZone.Level level, ZoneTimes.Month peak, double times) {
    return Derived.by(
            "whole minutes, up, of time of a watering × flow of the half full tank / flow now",
            SAME)
        .from("time of a watering", TimeSpan.minutes(peak.program().dayMinutes()))
        .from("run time needed", peak.need())
        .from("flow of the half full tank", zone.half().flow())
        .from("flow now", level.flow())
        .gives((int) Math.ceil(peak.program().dayMinutes() * times));
  }

  private static Derived<Length> sinks(TankZone zone, ZoneTimes.Month peak) {
    TankPlan tank = zone.tank();
    Derived<Volume> water = watering(zone, peak);
    return Derived.by("water of a watering / tank × height of its water", SAME)
        .from("water of a watering", water)
        .from("tank", tank.size())
        .from("height of its water", tank.body().height())
        .gives(tank.body().height().times(water.value().ratioTo(tank.size())));
  }
}
