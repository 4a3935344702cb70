package yardloom.materials.goods;

import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Lumber, edging, pavers, posts and wire. */
public final class GoodsTable implements TableMaker {
  @Override
  public String id() {
    return "materials-hard-goods";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Hard goods")
            .column(Column.text("item", "Item"))
            .column(Column.text("for", "For"))
            .column(Column.text("exact", "Exact"))
            .column(Column.text("order", "Order"))
            .column(Column.text("allowance", "Allowance"));
    for (BillLine line : facts.all(YardFacts.BILL)) {
      if (line.group() == BillGroup.HARD_GOODS || line.group() == BillGroup.BUILT) {
        table.row(
            Cell.text(line.item()),
            line.element().map(e -> Cell.text(e.title())).orElse(Cell.BLANK),
            Amounts.cell(plan, line.exact()),
            Amounts.cell(plan, line.order()),
            Cell.text(line.allowance()));
      }
    }
    return table
        .note("For beds of food use untreated rot-resistant wood, or ask which treatment is safe.")
        .note("What comes for several things is ordered together and stands without a place.")
        .note("Posts stand a third of their length in the ground; have utilities marked first.")
        .build();
  }
}
