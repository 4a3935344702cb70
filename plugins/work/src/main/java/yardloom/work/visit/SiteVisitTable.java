package yardloom.work.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.work.WorkPhase;
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
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.TimeSpan;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.CostTable;
import yardloom.work.labour.WorkSettings;
import yardloom.work.phase.PhaseOrders;
import yardloom.work.phase.PhaseTable;
import yardloom.work.phase.PhaseTime;
import yardloom.work.phase.PlantingVisit;

/** When the crew comes, for what, what must be there before, and what each visit costs. */
public final class SiteVisitTable implements TableMaker {
  @Override
  public String id() {
    return "work-visits";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        SiteVisit.FACT, PhaseTime.FACT, PlantingVisit.FACT, YardFacts.SUPPLIES, CostEstimate.FACT);
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
    List<SiteVisit> visits = facts.all(SiteVisit.FACT);
    boolean priced = visits.stream().anyMatch(v -> v.cost().isPresent());
    Table.Builder table =
        Table.titled(
                id(), priced ? CostTable.title("Visits of the crew", facts) : "Visits of the crew")
            .column(Column.of("visit", "Visit", Measure.COUNT))
            .column(Column.text("from", "From"))
            .column(Column.text("to", "To"))
            .column(Column.of("days", "Working days", Measure.COUNT))
            .column(Column.of("crew", "Crew", Measure.COUNT))
            .column(Column.of("hours", "Hours of one person", Measure.HOURS))
            .column(Column.text("what", "What"))
            .column(Column.text("there", "There before"))
            .column(Column.text("order", "First order by"));
    if (priced) {
      table.column(Column.of("cost", "Cost, all likely", Measure.MONEY));
    }
    if (visits.isEmpty()) {
      return table.build();
    }
    visits.forEach(v -> table.row(row(plan, facts, v, priced)));
    table.total(total(visits, priced));
    return table
        .note(
            "A visit is a run of working days without a gap. Hours add up to the labour table, cost"
                + " to the cost table with everything likely; what is bought counts with the visit"
                + " that needs it.")
        .build();
  }

  private static Cell[] row(Plan plan, Facts facts, SiteVisit visit, boolean priced) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.number(visit.number()));
    cells.add(PhaseTable.date(visit.from()));
    cells.add(PhaseTable.date(visit.to()));
    cells.add(Cell.number(visit.days()));
    boolean isRound = visit.phases().contains(WorkPhase.ESTABLISH);
    cells.add(Cell.number(isRound ? 1 : WorkSettings.of(plan).crew()));
    cells.add(Cell.of(visit.hours()));
    cells.add(Cell.text(what(plan, visit)));
    cells.add(Cell.text(there(plan, visit)));
    cells.add(PhaseTable.date(firstOrder(facts, visit)));
    if (priced) {
      cells.add(visit.cost().map(Cell::of).orElse(Cell.BLANK));
    }
    return cells.toArray(Cell[]::new);
  }

  private static Cell[] total(List<SiteVisit> visits, boolean priced) {
    Cell[] cells = new Cell[priced ? 10 : 9];
    java.util.Arrays.fill(cells, Cell.BLANK);
    cells[0] = Cell.text("all");
    cells[5] =
        Cell.of(visits.stream().map(v -> v.hours().value()).reduce(TimeSpan.ZERO, TimeSpan::plus));
    if (priced) {
      cells[9] =
          Cell.of(
              visits.stream()
                  .flatMap(v -> v.cost().stream())
                  .map(c -> c.value())
                  .reduce(Money.ZERO, Money::plus));
    }
    return cells;
  }

  private static String what(Plan plan, SiteVisit visit) {
    if (visit.phases().contains(WorkPhase.ESTABLISH)) {
      int times = WorkSettings.of(plan).visits().value();
      return "look after it, "
          + times
          + (times == 1 ? " time" : " times, on the days of the care visits");
    }
    List<String> parts = new ArrayList<>();
    visit.phases().forEach(p -> parts.add(p.title(plan)));
    if (!visit.kinds().isEmpty()) {
      parts.add("plant " + String.join(", ", visit.kinds()));
    }
    return String.join("; ", parts);
  }

  /** Truckloads by name and how many lines beside; the orders have all of them. */
  private static String there(Plan plan, SiteVisit visit) {
    List<String> parts = new ArrayList<>();
    for (BulkLoads load : visit.loads()) {
      int trucks = load.likely().value();
      parts.add(
          load.item()
              + " "
              + Say.volume(load.order().value(), plan.info().units())
              + (trucks == 1 ? " (1 load)" : " (" + trucks + " loads)"));
    }
    Set<String> others = new TreeSet<>();
    visit.lines().stream()
        .map(BillLine::item)
        .filter(i -> visit.loads().stream().noneMatch(l -> l.item().equals(BillLine.stem(i))))
        .forEach(others::add);
    if (!others.isEmpty()) {
      parts.add(
          parts.isEmpty() && others.size() == 1
              ? others.iterator().next()
              : others.size() + (others.size() == 1 ? " item" : " items") + " of the orders");
    }
    return String.join(", ", parts);
  }

  private static Optional<LocalDate> firstOrder(Facts facts, SiteVisit visit) {
    List<PhaseTime> phases = facts.all(PhaseTime.FACT);
    Stream<LocalDate> dates =
        visit.lines().stream()
            .flatMap(
                line ->
                    phases.stream()
                        .filter(p -> p.phase().id() == PhaseOrders.phaseOf(line, phases))
                        .flatMap(p -> PhaseOrders.orderBy(line, p, facts).stream()));
    return dates.min(LocalDate::compareTo);
  }
}
