package yardloom.work.cost;

import java.util.Optional;
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

/** Bags or bulk. */
public final class BagTable implements TableMaker {
  @Override
  public String id() {
    return "materials-bags-or-bulk";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(BagChoice.FACT, CostEstimate.FACT);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), CostTable.title("Bags or bulk", facts))
            .column(Column.text("item", "Item"))
            .column(Column.text("phase", "For"))
            .column(Column.of("order", "Order", Measure.VOLUME))
            .column(Column.of("bags", "Bags", Measure.COUNT))
            .column(Column.of("in-bags", "In bags", Measure.MONEY))
            .column(Column.of("in-bulk", "In bulk", Measure.MONEY))
            .column(Column.of("break-even", "Bulk wins from", Measure.VOLUME));
    for (BagChoice choice : facts.all(BagChoice.FACT)) {
      Optional<BagChoice.Cost> cost = choice.cost();
      table.row(
          Cell.text(choice.item()),
          Cell.text(choice.phase().title(plan)),
          Cell.of(choice.order()),
          Cell.of(choice.bags()),
          cost.map(c -> Cell.of(c.inBags())).orElse(Cell.BLANK),
          cost.map(c -> Cell.of(c.inBulk())).orElse(Cell.BLANK),
          cost.map(c -> c.breakEven().map(Cell::of).orElse(Cell.text("never"))).orElse(Cell.BLANK));
    }
    if (CostEstimate.atDemonstrationPrices(facts)) {
      table.note(CostTable.DEMO);
    }
    if (facts.all(BagChoice.FACT).stream().anyMatch(b -> b.cost().isEmpty())) {
      table.note("No money where the plan gives no price of bags, bulk and delivery.");
    }
    return table.build();
  }
}
