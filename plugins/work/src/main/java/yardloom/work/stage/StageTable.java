package yardloom.work.stage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchTotals;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.AddingUp;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.Volume;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.CostTable;
import yardloom.work.labour.TaskLoad;
import yardloom.work.phase.PhaseTime;

/** The stages of a yard that is made over several years, one row for each. */
public final class StageTable implements TableMaker {
  @Override
  public String id() {
    return "stages";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        PhaseTime.FACT, TaskLoad.FACT, YardFacts.STANDS, YardFacts.MULCH_TOTALS, CostEstimate.FACT);
  }

  /** What is asked of each stage is worked out for each stage. */
  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  /** What one stage comes to. */
  private record Line(
      PartOfPlan part,
      int beds,
      int plants,
      Optional<MulchTotals> mulch,
      Derived<TimeSpan> hours,
      Optional<Derived<Money>> cost) {
    static Line of(PartOfPlan part) {
      List<Element.Bed> beds =
          part.plan().all(Element.Bed.class).stream()
              .filter(b -> b.turn() == PartTurn.NOW)
              .toList();
      Derived.Builder hours = Derived.by("sum over tasks", StageSums.SOURCE);
      List<TaskLoad> tasks = part.facts().all(TaskLoad.FACT);
      tasks.forEach(t -> hours.from(t.title() + " (" + t.phase().id() + ")", t.likely()));
      return new Line(
          part,
          beds.size(),
          part.facts().all(YardFacts.STANDS).stream()
              .filter(s -> !s.planted().stands())
              .mapToInt(s -> s.placed().at().size())
              .sum(),
          part.facts().find(YardFacts.MULCH_TOTALS),
          hours.gives(TaskLoad.sum(tasks).likely()),
          part.facts().find(CostEstimate.FACT).map(c -> c.total().likely()));
    }
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<Line> lines = facts.all(PartOfPlan.FACT).stream().map(Line::of).toList();
    boolean priced = lines.stream().anyMatch(l -> l.cost().isPresent());
    Table.Builder table =
        Table.titled(id(), priced ? CostTable.title("Stages", facts) : "Stages")
            .column(Column.text("stage", "Stage"))
            .column(Column.text("from", "From"))
            .column(Column.text("to", "To"))
            .column(Column.of("beds", "Beds", Measure.COUNT))
            .column(Column.of("area", "Ground covered", Measure.AREA))
            .column(Column.of("plants", "Plants", Measure.COUNT))
            .column(Column.of("compost", "Compost, exact", Measure.VOLUME))
            .column(Column.of("chips", "Chips, exact", Measure.VOLUME))
            .column(Column.of("hours", "Hours of one person", Measure.HOURS));
    if (priced) {
      table.column(Column.of("cost", "Cost, all likely", Measure.MONEY));
    }
    if (lines.isEmpty()) {
      return table.build();
    }
    List<Cell> hours = hours(plan, lines);
    List<Cell> costs = StageSums.costs(lines.stream().map(Line::part).toList());
    for (int i = 0; i < lines.size(); i++) {
      table.row(row(lines.get(i), hours.get(i), priced ? List.of(costs.get(i)) : List.of()));
    }
    table.total(total(lines, priced));
    built(plan).ifPresent(table::note);
    return table
        .note(
            "What one stage makes is bought, worked and ordered in it; orders, loads, phases and"
                + " visits stand under its name in their tables. Orders are rounded up and the"
                + " marks called for in each stage, so that together they may be more than in one"
                + " go.")
        .note(
            "Lines and pipe sizes are those of the whole yard; a line is laid, and the tap fitted,"
                + " with the first stage that drinks from it. Cap what leads on to later stages.")
        .build();
  }

  /**
   * Printed so that they add up to the printed sum; the reason behind each keeps all its digits.
   */
  private static List<Cell> hours(Plan plan, List<Line> lines) {
    TimeSpan all = lines.stream().map(l -> l.hours().value()).reduce(TimeSpan.ZERO, TimeSpan::plus);
    List<BigDecimal> shown =
        AddingUp.rounded(
            lines.stream().map(l -> l.hours().value().in(Unit.HOUR)).toList(),
            all.in(Unit.HOUR),
            Measure.HOURS.decimals(plan.info().units()));
    List<Cell> cells = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      TimeSpan hours = TimeSpan.hours(shown.get(i).doubleValue());
      cells.add(new Cell(Optional.of(hours), Optional.of(lines.get(i).hours())));
    }
    return cells;
  }

  private static List<Cell> row(Line line, Cell hours, List<Cell> cost) {
    List<PhaseTime> phases = line.part().facts().all(PhaseTime.FACT);
    Optional<LocalDate> from = phases.stream().findFirst().flatMap(PhaseTime::start);
    Optional<LocalDate> to =
        phases.isEmpty() ? Optional.empty() : PhaseTime.lastOfWork(phases).end();
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(line.part().name()));
    cells.add(from.map(Cell::of).orElse(Cell.BLANK));
    cells.add(to.map(Cell::of).orElse(Cell.BLANK));
    cells.add(Cell.number(line.beds()));
    cells.add(line.mulch().map(m -> Cell.of(m.ground())).orElse(Cell.BLANK));
    cells.add(Cell.number(line.plants()));
    cells.add(line.mulch().map(m -> Cell.of(m.compost())).orElse(Cell.BLANK));
    cells.add(line.mulch().map(m -> Cell.of(m.chips())).orElse(Cell.BLANK));
    cells.add(hours);
    cells.addAll(cost);
    return cells;
  }

  private static Cell[] total(List<Line> lines, boolean priced) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text("all stages"));
    cells.add(Cell.BLANK);
    cells.add(Cell.BLANK);
    cells.add(Cell.number(lines.stream().mapToInt(Line::beds).sum()));
    cells.add(sum(lines, l -> l.mulch().map(MulchTotals::ground), Area.ZERO));
    cells.add(Cell.number(lines.stream().mapToInt(Line::plants).sum()));
    cells.add(sum(lines, l -> l.mulch().map(MulchTotals::compost), Volume.ZERO));
    cells.add(sum(lines, l -> l.mulch().map(MulchTotals::chips), Volume.ZERO));
    cells.add(sum(lines, l -> Optional.of(l.hours()), TimeSpan.ZERO));
    if (priced) {
      cells.add(sum(lines, Line::cost, Money.ZERO));
    }
    return cells.toArray(Cell[]::new);
  }

  private static <Q extends Quantity<Q>> Cell sum(
      List<Line> lines, Function<Line, Optional<Derived<Q>>> of, Q zero) {
    return Cell.of(
        StageSums.sum(
            lines.stream().map(Line::part).toList(), lines.stream().map(of).toList(), zero));
  }

  private static Optional<String> built(Plan plan) {
    List<String> names =
        plan.attributes().all(Stage.KEY).stream()
            .map(Attributes.Entry::value)
            .filter(Stage::built)
            .map(Stage::name)
            .toList();
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Built already, so nothing is bought or worked for it: "
                + String.join(", ", names)
                + ".");
  }
}
