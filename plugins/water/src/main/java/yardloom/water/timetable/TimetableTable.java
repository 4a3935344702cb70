package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;
import yardloom.water.head.Supply;
import yardloom.water.line.BedHydraulics;
import yardloom.water.tank.TankYear;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/** What is keyed into the timer, zone by zone and month by month, and for how long by hand. */
public final class TimetableTable implements TableMaker {
  private static final Source SET = Source.commonPractice("whole minutes on whole days");

  @Override
  public String id() {
    return "timetable";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(ZoneTimes.KEY, Zone.KEY, BedHydraulics.KEY, TankYear.KEY, TankZone.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Timetable of the timer, plants grown")
            .column(Column.text("month", "Month"))
            .column(Column.of("every", "Every … days", Measure.COUNT))
            .column(Column.text("start", "Start"))
            .column(Column.of("turns", "Turns", Measure.COUNT))
            .column(Column.of("minutes", "Minutes a turn", Measure.COUNT))
            .column(Column.of("soak", "Minutes between turns", Measure.COUNT))
            .column(Column.of("need", "Run time needed", Measure.HOURS))
            .column(Column.of("set", "Run time set", Measure.HOURS))
            .column(Column.of("by-hand", "By hand, minutes a week", Measure.COUNT));
    boolean isByTank =
        facts.all(ZoneTimes.KEY).stream().anyMatch(t -> TankChange.of(t.zone(), facts).isPresent());
    Optional<Derived<Flow>> open = Supply.open(plan).filter(o -> Supply.isTank(plan));
    if (isByTank) {
      table.column(Column.text("feed", "Water from, usual year"));
    }
    if (open.isPresent()) {
      table.column(Column.of("fill", "Tap into the tank, minutes a watering", Measure.COUNT));
    }
    boolean isByCan =
        facts.all(Zone.KEY).stream().anyMatch(z -> isCarried(z, facts) && !z.beds().isEmpty());
    if (isByCan) {
      table.column(Column.of("can", "From the tank, each watering", Measure.SMALL_WATER));
    }
    boolean any = false;
    for (ZoneTimes times : facts.all(ZoneTimes.KEY)) {
      if (!times.months().isEmpty()) {
        table.heading(TankChange.heading(times.zone(), facts));
        for (ZoneTimes.Month month : times.months()) {
          List<Cell> cells = new ArrayList<>(row(month));
          if (isByTank) {
            cells.add(
                Cell.text(
                    TankChange.of(times.zone(), facts)
                        .map(y -> y.source(month.month()))
                        .orElse("tap")));
          }
          open.ifPresent(o -> cells.add(fill(times.zone(), month, o, facts)));
          if (isByCan) {
            cells.add(carried(times.zone(), month, facts).map(Cell::of).orElse(Cell.BLANK));
          }
          table.row(cells);
        }
        any = true;
      }
    }
    if (any) {
      table.note(
          "Months that are not listed: off. Start: so that all zones end 10 minutes before the"
              + " month's earliest sunrise, if all are due on one day (common practice), by the"
              + " clock with its summer time. Needed: by the thirstiest bed of the zone, for grown"
              + " plants in a usual year; after good rain skip a watering, newly planted beds"
              + " follow the table of first weeks. Turns: where outlets give more than the soil"
              + " takes, each lasts until water would run off, the next starts when it has soaked"
              + " in. By hand: open the zone's valve for so long in all, on as many days as the"
              + " timer would.");
    }
    return table.build();
  }

  /** How long the open tap takes to bring one watering into the tank; empty without one. */
  static Optional<Derived<Integer>> fillMinutes(
      int zone, ZoneTimes.Month month, Derived<Flow> open, Facts facts) {
    return TankZone.of(zone, facts)
        .map(z -> TankLevelTable.watering(z, month))
        .map(
            water ->
                Derived.by("whole minutes, up, of water of a watering / flow of the open tap", SET)
                    .from("water of a watering", water)
                    .from("flow of the open tap", open)
                    .gives(
                        (int)
                            Math.ceil(
                                water.value().cubicMetres()
                                    / open.value().cubicMetresPerSecond()
                                    / 60)));
  }

  private static Cell fill(int zone, ZoneTimes.Month month, Derived<Flow> open, Facts facts) {
    return fillMinutes(zone, month, open, facts).map(Cell::of).orElse(Cell.BLANK);
  }

  /** Whether a tank waters it whose water does not run into its lines by itself. */
  private static boolean isCarried(Zone zone, Facts facts) {
    return TankZone.of(zone.number(), facts).isEmpty()
        && TankChange.of(zone.number(), facts).isPresent();
  }

  /** What is carried or pumped to the zone in place of a watering by its lines; else empty. */
  static Optional<Derived<Volume>> carried(int zone, ZoneTimes.Month month, Facts facts) {
    Zone its = Zone.of(zone, facts);
    boolean isDry = TankChange.of(zone, facts).filter(y -> !y.isByTap(month.month())).isEmpty();
    if (isDry || !isCarried(its, facts)) {
      return Optional.empty();
    }
    TimeSpan time = TimeSpan.minutes(month.program().dayMinutes());
    Derived.Builder why = Derived.by("sum over beds of flow × time of a watering", SET);
    Flow flow = Flow.ZERO;
    for (ElementId bed : its.beds()) {
      Derived<Flow> takes = BedHydraulics.of(bed, facts).outflow().flow();
      flow = flow.plus(takes.value());
      why.from("flow " + bed.name(), takes);
    }
    return Optional.of(why.from("time of a watering", time).gives(flow.during(time)));
  }

  private static List<Cell> row(ZoneTimes.Month month) {
    int days = Months.days(month.month());
    boolean isSplit = month.program().turns() > 1;
    return List.of(
        Cell.text(Months.name(month.month())),
        Cell.of(month.everyDays()),
        Starts.cell(month.start()),
        Cell.of(month.turns()),
        Cell.of(month.turnMinutes()),
        isSplit ? Cell.of(month.soakMinutes()) : Cell.BLANK,
        Cell.of(month.need()),
        Cell.of(
            Derived.by("turns × time of a turn × days / days apart", SET)
                .from("turns", month.program().turns())
                .from("time of a turn", TimeSpan.minutes(month.program().turnMinutes()))
                .from("days", days)
                .from("days apart", month.program().everyDays())
                .gives(TimeSpan.minutes(month.program().monthMinutes(days)))),
        Cell.of(month.minutesAWeek()));
  }
}
