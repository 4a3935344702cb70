package yardloom.water.timetable;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.water.head.Supply;
import yardloom.water.line.BedHydraulics;
import yardloom.water.need.WaterText;
import yardloom.water.tank.TankYear;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/**
 * The timetable as it is keyed into a timer: a few lines for each zone, months across. The long
 * form, with what is needed and what is set, is {@link TimetableTable}.
 */
public final class TimerPageTable implements TableMaker {
  private static final String OFF = "off";
  private static final double DAYS = 7;

  @Override
  public String id() {
    return "timer-page";
  }

  @Override
  public Set<FactKey<?>> reads() {
    Set<FactKey<?>> reads = new LinkedHashSet<>(RainOff.READS);
    reads.addAll(Set.of(ZoneTimes.KEY, Zone.KEY, BedHydraulics.KEY, TankYear.KEY, TankZone.KEY));
    return reads;
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<Integer> months =
        IntStream.range(0, 12)
            .filter(m -> facts.all(ZoneTimes.KEY).stream().anyMatch(t -> month(t, m).isPresent()))
            .boxed()
            .toList();
    Table.Builder table =
        Table.titled(id(), "Into the timer, month by month, plants grown")
            .column(Column.text("set", "Set"));
    months.forEach(m -> table.column(Column.text("m" + (m + 1), Months.name(m))));
    if (saysRain(facts)) {
      usualRain(table, months, plan, facts);
    }
    for (ZoneTimes times : facts.all(ZoneTimes.KEY)) {
      if (!times.months().isEmpty()) {
        table.heading(TankChange.heading(times.zone(), facts));
        zone(table, months, times, plan, facts);
      }
    }
    return months.isEmpty() ? table.build() : notes(table, plan, facts).build();
  }

  private static void zone(
      Table.Builder table, List<Integer> months, ZoneTimes times, Plan plan, Facts facts) {
    cells(
        table,
        months,
        times,
        "Every … days",
        m -> because("" + m.program().everyDays(), m.everyDays()));
    row(table, months, times, "Start", m -> Starts.text(m.start()));
    cells(table, months, times, "Minutes", m -> because(minutes(m), m.turnMinutes()));
    cells(table, months, times, "By hand, a week", m -> because(byHand(m), m.minutesAWeek()));
    if (saysRain(times, facts)) {
      RainOff.rains(plan)
          .forEach(
              rain ->
                  cells(
                      table,
                      months,
                      times,
                      "Off after " + RainOff.words(plan, rain) + ", days",
                      m ->
                          RainOff.of(times.zone(), m.month(), rain, facts)
                              .map(d -> because("" + RainOff.whole(d), d))
                              .orElse(Cell.text(""))));
    }
    Optional<TankYear> year = TankChange.of(times.zone(), facts);
    year.ifPresent(y -> row(table, months, times, "Water from", m -> y.shortly(m.month())));
    Optional<Derived<Flow>> open = Supply.open(plan).filter(o -> Supply.isTank(plan));
    open.ifPresent(
        o ->
            cells(
                table,
                months,
                times,
                "Tap into tank, min",
                m ->
                    TimetableTable.fillMinutes(times.zone(), m, o, facts)
                        .map(minutes -> because("" + minutes.value(), minutes))
                        .orElse(Cell.text(""))));
    if (times.months().stream()
        .anyMatch(m -> TimetableTable.carried(times.zone(), m, facts).isPresent())) {
      cells(
          table,
          months,
          times,
          "Or from the tank, each",
          m ->
              TimetableTable.carried(times.zone(), m, facts)
                  .map(water -> because(WaterText.both(plan, water.value()), water))
                  .orElse(Cell.text("")));
    }
  }

  /** Whether the page says for some zone how many days a rain saves. */
  public static boolean saysRain(Facts facts) {
    return facts.all(ZoneTimes.KEY).stream().anyMatch(times -> saysRain(times, facts));
  }

  private static boolean saysRain(ZoneTimes times, Facts facts) {
    return times.months().stream()
        .anyMatch(m -> RainOff.of(times.zone(), m.month(), Length.inches(1), facts).isPresent());
  }

  /** Minutes are those of a month with its usual rain: only more than that saves a watering. */
  private static void usualRain(Table.Builder table, List<Integer> months, Plan plan, Facts facts) {
    List<ClimateNormals.Month> normals = facts.get(YardFacts.CLIMATE).months();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text("Rain counted on, a week"));
    months.forEach(
        m ->
            cells.add(
                Cell.text(
                    RainOff.gauge(plan, normals.get(m).rain().times(DAYS / Months.days(m))))));
    table.row(cells);
  }

  /**
   * How often in a week a valve is opened by hand, and for how many minutes each time: on as many
   * days as the timer would, the same water in all.
   */
  private static String byHand(ZoneTimes.Month month) {
    int times = Math.max(1, (int) Math.ceil(DAYS / month.program().everyDays()));
    return times + " × " + (int) Math.ceil(month.minutesAWeek().value() / (double) times);
  }

  private static void row(
      Table.Builder table,
      List<Integer> months,
      ZoneTimes times,
      String what,
      Function<ZoneTimes.Month, String> says) {
    cells(table, months, times, what, m -> Cell.text(says.apply(m)));
  }

  private static void cells(
      Table.Builder table,
      List<Integer> months,
      ZoneTimes times,
      String what,
      Function<ZoneTimes.Month, Cell> says) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(what));
    months.forEach(m -> cells.add(month(times, m).map(says).orElse(Cell.text(OFF))));
    table.row(cells);
  }

  private static Cell because(String text, Derived<?> why) {
    return new Cell(Optional.of(text), Optional.of(why));
  }

  private static Optional<ZoneTimes.Month> month(ZoneTimes times, int month) {
    return times.months().stream().filter(m -> m.month() == month).findFirst();
  }

  /** Of one turn, after how many there are and how long the soil rests between, if it does. */
  private static String minutes(ZoneTimes.Month month) {
    int turns = month.program().turns();
    return turns == 1
        ? "" + month.program().turnMinutes()
        : turns + " × " + month.program().turnMinutes() + ", rest " + (int) month.soak().minutes();
  }

  /** A station of the timer without lines would look forgotten. */
  private static void offAllYear(Table.Builder table, Facts facts) {
    List<String> off =
        facts.all(ZoneTimes.KEY).stream()
            .filter(times -> times.months().isEmpty())
            .map(times -> TankChange.heading(times.zone(), facts))
            .toList();
    if (!off.isEmpty()) {
      table.note(
          String.join("; ", off)
              + ": off all year after the first weeks, as rain gives what grown plants use in a"
              + " usual year; in a drought run it once and look.");
    }
  }

  private static Table.Builder notes(Table.Builder table, Plan plan, Facts facts) {
    offAllYear(table, facts);
    table.note(
        "Months without a column: off. Start: so that all zones end 10 minutes before the month's"
            + " earliest sunrise, if all are due on one day (common practice), by the clock with"
            + " its summer time. 3 × 10, rest 40: three turns of ten minutes, forty between an end"
            + " and the next start, so that the soil takes it; other zones may run meanwhile. By"
            + " hand, 2 × 45: without a timer open the zone's valve on two days of the week, days"
            + " apart, for 45 minutes each; in turns where the timer has them. "
            + (saysRain(facts)
                ? "Rain counted on: so much falls in a usual week, and the minutes leave it out"
                    + " already. Off after: where a week brings so much beyond that, put off what"
                    + " falls due on so many days after the rain to the day behind them; a zone"
                    + " without that line skips one watering. "
                : "After good rain skip a watering. ")
            + "Newly planted beds follow the table of first weeks. What is needed beside what is"
            + " set: see the report.");
    if (Supply.isTank(plan)) {
      table.note(
          "Water comes from the tank by its height: one zone at a time, early or in the evening."
              + " Minutes are those of a tank half full; 'zones by the level in the tank' says how"
              + " many times as long from a full or a low one, and when to close the valve. 'Tank"
              + " to' a day: from then on, in a usual year, the tap fills the tank before each"
              + " watering, over a gap of air, for the minutes of the last line.");
    } else if (!facts.all(TankYear.KEY).isEmpty()) {
      table.note(
          "Water from the tank: by can, or through a hose of its own, so much in place of a"
              + " watering, and the timer is off for that zone; 'tank to' a day: from then on, in a"
              + " usual year, the timer is on.");
    }
    return table;
  }
}
