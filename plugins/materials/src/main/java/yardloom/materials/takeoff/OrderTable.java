package yardloom.materials.takeoff;

import java.util.Set;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Volume;

/** What to order: exact, allowance, order. */
public final class OrderTable implements TableMaker {
  @Override
  public String id() {
    return "materials-order";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Materials to order")
            .column(Column.text("item", "Item"))
            .column(Column.text("phase", "For"))
            .column(Column.of("exact", "Exact", Measure.VOLUME))
            .column(Column.of("order", "Order", Measure.VOLUME))
            .column(Column.of("exact-count", "Exact pieces", Measure.COUNT))
            .column(Column.of("order-count", "Order pieces", Measure.COUNT))
            .column(Column.text("allowance", "Allowance"));
    for (BillLine line : facts.all(YardFacts.BILL)) {
      if (line.group() == BillGroup.SHEET_MULCH) {
        boolean bulk = line.order().value() instanceof Volume;
        table.row(
            Cell.text(line.item()),
            Cell.text(line.phase().title(plan)),
            bulk ? Cell.of(line.exact()) : Cell.BLANK,
            bulk ? Cell.of(line.order()) : Cell.BLANK,
            bulk ? Cell.BLANK : Cell.of(line.exact()),
            bulk ? Cell.BLANK : Cell.of(line.order()),
            Cell.text(line.allowance()));
      }
    }
    return table
        .note(
            "Exact is what lies in place; order adds the allowance and rounds up to what is sold.")
        .build();
  }
}
