package yardloom.materials.sheet;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Supply;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.TimeSpan;
import yardloom.materials.calc.PhaseSchedule;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.PhaseTime;
import yardloom.materials.model.TaskLoad;
import yardloom.materials.model.WorkSettings;
import yardloom.materials.work.BillSums;
import yardloom.materials.work.MaterialFacts;
import yardloom.materials.work.ScheduleCalculator;

/** Tables of hours, phases, sources and orders by phase. */
public final class WorkTables {
  private static final int UNKNOWN_LEAD = 7;

  private WorkTables() {}

  /** Labour, phases and orders. */
  public static List<TableMaker> all() {
    return List.of(new Labour(), new Phases(), new Orders());
  }

  /** Hours by task. */
  private static final class Labour implements TableMaker {
    @Override
    public String id() {
      return "materials-labour";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.TASKS);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      WorkSettings work = WorkSettings.of(plan);
      Table.Builder table =
          Table.titled(id(), "Labour")
              .column(Column.text("task", "Task"))
              .column(Column.text("phase", "Phase"))
              .column(Column.text("amount", "Amount"))
              .column(Column.of("low", "Low", Measure.HOURS))
              .column(Column.of("likely", "Likely", Measure.HOURS))
              .column(Column.of("high", "High", Measure.HOURS));
      TimeSpan[] sums = {TimeSpan.ZERO, TimeSpan.ZERO, TimeSpan.ZERO};
      List<TaskLoad> tasks = facts.all(MaterialFacts.TASKS);
      for (TaskLoad t : tasks) {
        sums[0] = sums[0].plus(t.low().value());
        sums[1] = sums[1].plus(t.likely().value());
        sums[2] = sums[2].plus(t.high().value());
        table.row(
            Cell.text(t.task()),
            Cell.text(t.phase().id()),
            Amounts.cell(plan, t.amount()),
            Cell.of(t.low()),
            Cell.of(t.likely()),
            Cell.of(t.high()));
      }
      if (!tasks.isEmpty()) {
        table.total(
            Cell.text("all, hours of one person"),
            Cell.BLANK,
            Cell.BLANK,
            Cell.of(sums[0]),
            Cell.of(sums[1]),
            Cell.of(sums[2]));
        double days = sums[1].hours() / (work.crew() * work.hoursPerDay());
        table.note(
            String.format(
                java.util.Locale.ROOT,
                "A crew of %d working %.1f hours a day needs about %.1f days.",
                work.crew(),
                work.hoursPerDay(),
                days));
      }
      return table.note("Most rates are from memory; keep your own and put them in.").build();
    }
  }

  /** When each phase is worked. */
  private static final class Phases implements TableMaker {
    @Override
    public String id() {
      return "materials-phases";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.PHASES, YardFacts.FROST);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Phases")
              .column(Column.text("phase", "Phase"))
              .column(Column.of("day", "Working day", Measure.COUNT))
              .column(Column.of("days", "Days", Measure.COUNT))
              .column(Column.text("from", "From"))
              .column(Column.text("to", "To"))
              .column(Column.text("after", "After"));
      for (PhaseTime t : facts.all(MaterialFacts.PHASES)) {
        String after = String.join(", ", t.phase().after().stream().map(WorkPhase::id).toList());
        table.row(
            Cell.text(t.phase().title()),
            Cell.number(t.firstDay()),
            Cell.number(t.days()),
            date(t.start()),
            date(t.end()),
            Cell.text(t.why().isEmpty() ? after : after + "; " + t.why()));
      }
      frost(plan, facts).ifPresent(table::note);
      return table
          .note("One crew, one phase after the other, Monday to Friday.")
          .note("Cardboard is covered the day it is laid.")
          .build();
    }
  }

  /** Which frost days hold planting back, and who says so. */
  private static Optional<String> frost(Plan plan, Facts facts) {
    WorkSettings work = ScheduleCalculator.settings(plan, facts);
    if (work.lastFrost().isEmpty() || work.firstFrost().isEmpty()) {
      return Optional.of("No frost days are given: planting waits for none.");
    }
    boolean own =
        plan.attributes().get(MaterialKeys.WORK).flatMap(WorkSettings::lastFrost).isPresent();
    String by =
        own ? "as the plan says" : facts.get(YardFacts.FROST).lastOfSpring().source().cite();
    return Optional.of(
        "No planting from six weeks before the first frost ("
            + day(work.firstFrost().get())
            + ") to the last frost ("
            + day(work.lastFrost().get())
            + "): "
            + by
            + ".");
  }

  private static String day(MonthDay day) {
    return day.toString().substring(2);
  }

  /** What each phase needs, and when to order it. */
  private static final class Orders implements TableMaker {
    @Override
    public String id() {
      return "materials-orders-by-phase";
    }

    @Override
    public Set<FactKey<?>> reads() {
      return Set.of(MaterialFacts.PHASES, YardFacts.BILL, YardFacts.SUPPLIES);
    }

    @Override
    public Table make(Plan plan, Facts facts) {
      Table.Builder table =
          Table.titled(id(), "Orders by phase")
              .column(Column.text("phase", "Phase"))
              .column(Column.text("item", "Item"))
              .column(Column.text("order", "Order"))
              .column(Column.of("lead", "Lead, days", Measure.COUNT))
              .column(Column.text("by", "Order by"));
      for (PhaseTime t : facts.all(MaterialFacts.PHASES)) {
        for (BillLine line : BillSums.byItem(neededIn(t, facts.all(YardFacts.BILL)))) {
          int lead = leadDays(line.item(), facts);
          table.row(
              Cell.text(t.phase().title()),
              Cell.text(line.element().map(e -> line.item() + ", " + e).orElse(line.item())),
              Amounts.cell(plan, line.order()),
              Cell.number(lead),
              date(PhaseSchedule.orderBy(t.start(), lead)));
        }
      }
      return table
          .note("Leads are the longest of the sources listed; a week where none is known.")
          .build();
    }
  }

  /** The lines of the bill that a phase uses. */
  static List<BillLine> neededIn(PhaseTime time, List<BillLine> bill) {
    return bill.stream().filter(line -> line.phase() == time.phase().id()).toList();
  }

  /** The longest lead of an item's sources; a week where none is known. */
  static int leadDays(String item, Facts facts) {
    return facts.all(YardFacts.SUPPLIES).stream()
        .filter(s -> s.item().equals(item))
        .mapToInt(Supply::leadDays)
        .max()
        .orElse(UNKNOWN_LEAD);
  }

  static Cell date(Optional<LocalDate> date) {
    return date.map(d -> Cell.text(d.toString())).orElse(Cell.BLANK);
  }
}
