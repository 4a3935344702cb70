package yardloom.work.stage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Money;
import yardloom.work.cost.CostEstimate;
import yardloom.work.cost.CostTable;

/** What each stage costs, item by item, beside the whole. */
public final class StageCostTable implements TableMaker {
  @Override
  public String id() {
    return "stage-costs";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CostEstimate.FACT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    List<PartOfPlan> stages = facts.all(PartOfPlan.FACT);
    Table.Builder table =
        Table.titled(id(), CostTable.title("Cost by stage, all likely", facts))
            .column(Column.text("item", "Item"));
    for (int i = 0; i < stages.size(); i++) {
      table.column(Column.of("stage-" + (i + 1), stages.get(i).name(), Measure.MONEY));
    }
    table.column(Column.of("all", "All stages", Measure.MONEY));
    Optional<CostEstimate> whole = facts.find(CostEstimate.FACT);
    if (stages.isEmpty() || whole.isEmpty()) {
      return table.build();
    }
    List<String> items = List.copyOf(items(whole.get(), stages));
    List<Cell> totals = StageSums.costs(stages);
    List<List<Cell>> columns = new ArrayList<>();
    for (int s = 0; s < stages.size(); s++) {
      PartOfPlan stage = stages.get(s);
      columns.add(
          StageSums.added(
              items.stream().map(i -> cost(i, stage)).toList(), printed(totals.get(s))));
    }
    for (int i = 0; i < items.size(); i++) {
      int row = i;
      String item = items.get(i);
      List<Cell> cells = cells(item, columns.stream().map(c -> c.get(row)).toList());
      cells.add(sum(cells, stages, stages.stream().map(s -> cost(item, s)).toList()));
      table.row(cells);
    }
    List<Cell> sums = cells("total", totals);
    sums.add(Cell.of(StageSums.sum(stages, StageSums.likely(stages), Money.ZERO)));
    table.total(sums.toArray(Cell[]::new));
    return table
        .note(
            "Every amount, price and pace at its likely value. What is ordered in two stages is"
                + " rounded up twice, and comes in loads of its own.")
        .build();
  }

  /** As the whole has them, then what only a stage buys, such as boards of another length. */
  private static Set<String> items(CostEstimate whole, List<PartOfPlan> stages) {
    Set<String> items = new LinkedHashSet<>();
    whole.rows().forEach(r -> items.add(r.item()));
    stages.forEach(s -> rows(s).forEach(r -> items.add(r.item())));
    return items;
  }

  private static Stream<CostEstimate.Row> rows(PartOfPlan stage) {
    return stage.facts().find(CostEstimate.FACT).stream().flatMap(c -> c.rows().stream());
  }

  /** An item may have several rows, such as seed for several days. */
  private static Optional<Derived<Money>> cost(String item, PartOfPlan stage) {
    List<Derived<Money>> costs =
        rows(stage).filter(r -> r.item().equals(item)).map(CostEstimate.Row::likely).toList();
    if (costs.size() < 2) {
      return costs.stream().findFirst();
    }
    Derived.Builder why = Derived.by("sum over rows", StageSums.SOURCE);
    costs.forEach(c -> why.from(item, c));
    return Optional.of(
        why.gives(costs.stream().map(Derived::value).reduce(Money.ZERO, Money::plus)));
  }

  private static Optional<Money> printed(Cell cell) {
    return cell.value().filter(Money.class::isInstance).map(Money.class::cast);
  }

  private static List<Cell> cells(String item, List<Cell> costs) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(item));
    cells.addAll(costs);
    return cells;
  }

  /** The sum of what a row prints; the reason behind it keeps all its digits. */
  private static Cell sum(
      List<Cell> row, List<PartOfPlan> stages, List<Optional<Derived<Money>>> costs) {
    Money sum = row.stream().flatMap(c -> printed(c).stream()).reduce(Money.ZERO, Money::plus);
    return new Cell(Optional.of(sum), Optional.of(StageSums.sum(stages, costs, Money.ZERO)));
  }
}
