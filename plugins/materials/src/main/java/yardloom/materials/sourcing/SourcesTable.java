package yardloom.materials.sourcing;

import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.ItemSource;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Where each item of the bill comes from. */
public final class SourcesTable implements TableMaker {
  @Override
  public String id() {
    return "materials-sources";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL, YardFacts.SUPPLIES);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Where to get it")
            .column(Column.text("item", "Item"))
            .column(Column.text("order", "Order"))
            .column(Column.text("from", "From"))
            .column(Column.text("cost", "Cost"))
            .column(Column.text("ask", "Ask for"))
            .column(Column.text("refuse", "Refuse"))
            .column(Column.of("lead", "Lead, days", Measure.COUNT))
            .column(Column.text("source", "Source"));
    for (BillLine line : facts.all(YardFacts.BILL)) {
      for (ItemSource supply : facts.all(YardFacts.SUPPLIES)) {
        if (supply.item().equals(line.item())) {
          table.row(
              Cell.text(line.item()),
              Amounts.cell(plan, line.order()),
              Cell.text(supply.from()),
              Cell.text(supply.cost()),
              Cell.text(supply.ask()),
              Cell.text(supply.refuse()),
              Cell.number(supply.leadDays()),
              Cell.text(supply.source().cite()));
        }
      }
    }
    return table.build();
  }
}
