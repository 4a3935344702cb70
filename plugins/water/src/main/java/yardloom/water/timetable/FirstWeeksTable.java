package yardloom.water.timetable;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.water.need.EstablishmentTable;
import yardloom.water.timetable.FirstWeeks.Wait.Reason;

/** What is keyed into the timer in the first 45 days after planting, zone by zone. */
public final class FirstWeeksTable implements TableMaker {
  @Override
  public String id() {
    return "first-weeks-timer";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(FirstWeeks.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "First weeks after planting, into the timer")
            .column(Column.text("days", "Days"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"))
            .column(Column.of("every", "Every … days", Measure.COUNT))
            .column(Column.text("start", "Start"))
            .column(Column.of("turns", "Turns", Measure.COUNT))
            .column(Column.of("minutes", "Minutes a turn", Measure.COUNT))
            .column(Column.of("soak", "Minutes between turns", Measure.COUNT))
            .column(Column.of("need", "Run time needed", Measure.HOURS))
            .column(Column.text("when", "Note"));
    boolean isByCan =
        facts.all(FirstWeeks.KEY).stream()
            .flatMap(z -> z.waits().stream())
            .anyMatch(w -> w.reason() == Reason.BY_CAN);
    if (isByCan) {
      table.column(Column.of("can", "By can, a day", Measure.SMALL_WATER));
    }
    for (FirstWeeks zone : facts.all(FirstWeeks.KEY)) {
      table.heading(
          String.format(
              Locale.ROOT, "Zone %d, for %s: %s", zone.zone(), zone.beds(), zone.kinds()));
      for (FirstWeeks.Wait wait : zone.waits()) {
        List<Cell> cells = new ArrayList<>(row(zone, wait));
        if (isByCan) {
          cells.add(wait.daily().map(d -> (Cell) Cell.of(d)).orElse(Cell.BLANK));
        }
        table.row(cells);
      }
      for (FirstWeeks.Weeks weeks : zone.weeks()) {
        List<Cell> cells = new ArrayList<>(row(zone, weeks));
        if (isByCan) {
          cells.add(Cell.BLANK);
        }
        table.row(cells);
      }
    }
    if (!facts.all(FirstWeeks.KEY).isEmpty()) {
      table.note(
          "In place of the timetable, from the day of planting or from the month in which leaves"
              + " come; then on by the timetable. Needed: what the thirstiest bed takes until the"
              + " next watering, over the efficiency of drip, without rain: leave one out after 1/2"
              + " in (13 mm). Planted a week or more later in the same zone: its own lines; while"
              + " two hold at once, set the more frequent one. Off, on if dry: rain usually does it"
              + " then. By can or hose, no dripline yet: so much a day for all of them together, in"
              + " steps by the table of water for new plants; keys begin on the morning after the"
              + " dripline is laid. Closed, nothing planted yet or at rest: shut the zone, or clamp"
              + " the line to that bed where others of the zone run. New trees in beds and with"
              + " rings of dripline drink from their root ball: by can; so do all once the lines"
              + " are drained for winter.");
    }
    return table.build();
  }

  private static List<Cell> row(FirstWeeks zone, FirstWeeks.Wait wait) {
    boolean isByCan = wait.reason() == Reason.BY_CAN;
    return List.of(
        isByCan ? days(zone, wait.from(), wait.until()) : Cell.BLANK,
        Cell.of(wait.from()),
        Cell.of(wait.until()),
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK,
        Cell.text(
            switch (wait.reason()) {
              case BY_CAN -> "by can or hose";
              case BARE -> "closed: bare";
              case RESTS -> "closed: at rest";
            }));
  }

  private static Cell days(FirstWeeks zone, LocalDate from, LocalDate until) {
    long first = ChronoUnit.DAYS.between(zone.from(), from) + 1;
    return Cell.text(first + " to " + (ChronoUnit.DAYS.between(zone.from(), until) + 1));
  }

  private static List<Cell> row(FirstWeeks zone, FirstWeeks.Weeks weeks) {
    return List.of(
        days(zone, weeks.from(), weeks.until()),
        Cell.of(weeks.from()),
        Cell.of(weeks.until()),
        Cell.of(
            Derived.by("days apart in this step", EstablishmentTable.MINNESOTA)
                .from("days apart in this step", weeks.step().everyDays())
                .gives(weeks.step().everyDays())),
        Starts.cell(weeks.start()),
        Cell.of(weeks.turns()),
        Cell.of(weeks.turnMinutes()),
        weeks.program().turns() > 1 ? Cell.number((int) weeks.soak().minutes()) : Cell.BLANK,
        Cell.of(weeks.need()),
        weeks.isRainedOn() ? Cell.text("off, on if dry") : Cell.BLANK);
  }
}
