package yardloom.work.phase;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.TimeSpan;
import yardloom.work.labour.TaskLoad;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

/** When each phase is worked. */
public final class PhaseTable implements TableMaker {
  private static final double SMALLEST_HOURS = 0.05;

  private static final String DAYS =
      "One crew, one phase after the other, Monday to Friday; the next begins when the one before"
          + " it is done, so many hours into the day as it says; they stay for half an hour rather"
          + " than come again for less. Days on the calendar are working"
          + " days begun, waiting included, for visits from the first to the last, and two phases"
          + " may share one; hours are the likely ones of the labour table, without waiting.";

  @Override
  public String id() {
    return "materials-phases";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PhaseTime.FACT, TaskLoad.FACT, YardFacts.FROST);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Phases")
            .column(Column.text("phase", "Phase"))
            .column(Column.of("day", "Working day", Measure.COUNT))
            .column(Column.of("days", "Days on the calendar", Measure.COUNT))
            .column(Column.of("hours", "Hours of one person", Measure.HOURS))
            .column(Column.text("from", "From"))
            .column(Column.text("to", "To"))
            .column(Column.text("after", "After"))
            .column(Column.of("at", "Begins, hours into the day", Measure.HOURS));
    WorkSettings work = WorkSettings.of(plan);
    for (PhaseTime t : facts.all(PhaseTime.FACT)) {
      String after = String.join(", ", t.phase().after().stream().map(x -> x.title(plan)).toList());
      table.row(
          Cell.text(t.phase().title(plan)),
          Cell.number(t.firstDay()),
          Cell.number(t.days()),
          Cell.of(TimeSpan.hours(t.hours())),
          date(t.start()),
          date(t.end()),
          Cell.text(waits(t, after)),
          Cell.of(TimeSpan.hours(t.gone() * work.hoursPerDay())));
    }
    frost(plan, facts).ifPresent(table::note);
    later(facts).ifPresent(table::note);
    int off = Workdays.of(plan).size();
    if (off > 0) {
      table.note("Nobody works on the " + off + " days off that are named.");
    }
    return table.note(DAYS).note("Cardboard is covered the day it is laid.").build();
  }

  /** Visits may begin before the work ends, so that they wait for no phase. */
  private static String waits(PhaseTime time, String after) {
    if (time.why().isEmpty()) {
      return after;
    }
    boolean isByDate = time.phase().id() == WorkPhase.ESTABLISH || after.isEmpty();
    return isByDate ? time.why() : after + "; " + time.why();
  }

  /** Which frost days hold planting back, and who says so. */
  private static Optional<String> frost(Plan plan, Facts facts) {
    WorkSettings work = ScheduleCalculator.settings(plan, facts);
    if (work.lastFrost().isEmpty() || work.firstFrost().isEmpty()) {
      return Optional.of("No frost days are given: planting waits for none.");
    }
    String by =
        facts
            .find(YardFacts.FROST)
            .map(f -> f.lastOfSpring().source().cite())
            .orElse("as the plan says");
    return Optional.of(
        "Where no kinds are named, no planting from six weeks before the first frost ("
            + TableFormat.day(work.firstFrost().get())
            + ") to the last frost ("
            + TableFormat.day(work.lastFrost().get())
            + "): "
            + by
            + ".");
  }

  /** What the labour table has and no phase: planting on days of its own. */
  private static Optional<String> later(Facts facts) {
    double all = TaskLoad.sum(facts.all(TaskLoad.FACT)).likely().hours();
    double phases = facts.all(PhaseTime.FACT).stream().mapToDouble(PhaseTime::hours).sum();
    return all - phases < SMALLEST_HOURS
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "Later visits to plant take %.1f h beside, of %.1f h in all; see Visits to plant.",
                all - phases,
                all));
  }

  /** A date that may not be known. */
  public static Cell date(Optional<LocalDate> date) {
    return date.map(Cell::of).orElse(Cell.BLANK);
  }
}
