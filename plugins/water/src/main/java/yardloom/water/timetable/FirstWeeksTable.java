package yardloom.water.timetable;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
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
import yardloom.water.need.TaperTable;
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
    for (FirstWeeks zone : facts.all(FirstWeeks.KEY)) {
      table.heading(
          String.format(
              Locale.ROOT, "Zone %d, for %s: %s", zone.zone(), zone.beds(), zone.kinds()));
      zone.waits().forEach(wait -> row(table, zone, wait));
      zone.weeks().forEach(weeks -> row(table, zone, weeks));
    }
    if (!facts.all(FirstWeeks.KEY).isEmpty()) {
      table.note(
          "In place of the timetable, from the day of planting or from the month in which leaves come;"
              + " then on by the timetable. Needed: what the thirstiest bed takes until the next"
              + " watering, over the efficiency of drip, without rain: leave one out after 1/2 in"
              + " (13 mm). Planted a week or more later in the same zone: its own lines; while two hold"
              + " at once, set the more frequent one. By can or hose: as the table of that name says; keys begin on the morning after the dripline is laid. Closed: shut"
              + " the zone, or clamp the line to that bed where others of the zone run. New trees in beds and with rings of dripline drink"
              + " from their root ball: by can; so do all once the lines are drained for winter.");
    }
    return table.build();
  }

  private static void row(Table.Builder table, FirstWeeks zone, FirstWeeks.Wait wait) {
    boolean isByCan = wait.reason() == Reason.BY_CAN;
    table.row(
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
              case BY_CAN -> "no dripline yet: by can or hose, see " + TaperTable.TITLE;
              case BARE -> "closed: nothing is planted there yet";
              case RESTS -> "closed: it rests";
            }));
  }

  private static Cell days(FirstWeeks zone, LocalDate from, LocalDate until) {
    long first = ChronoUnit.DAYS.between(zone.from(), from) + 1;
    return Cell.text(first + " to " + (ChronoUnit.DAYS.between(zone.from(), until) + 1));
  }

  private static void row(Table.Builder table, FirstWeeks zone, FirstWeeks.Weeks weeks) {
    table.row(
        days(zone, weeks.from(), weeks.until()),
        Cell.of(weeks.from()),
        Cell.of(weeks.until()),
        Cell.number(weeks.program().everyDays()),
        Starts.cell(weeks.start()),
        Cell.number(weeks.program().turns()),
        Cell.number(weeks.program().turnMinutes()),
        weeks.program().turns() > 1 ? Cell.number((int) weeks.soak().minutes()) : Cell.BLANK,
        Cell.of(weeks.need()),
        weeks.isRainedOn() ? Cell.text("usually enough: off, on if dry") : Cell.BLANK);
  }
}
