package yardloom.soil.amendment;

import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** What to spread on the beds. */
public final class AmendmentTable implements TableMaker {
  @Override
  public String id() {
    return "materials-amendments";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(AmendmentDose.FACT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Amendments")
            .column(Column.text("item", "Item"))
            .column(Column.text("amount", "Amount"))
            .column(Column.text("when", "When"));
    for (AmendmentDose dose : facts.all(AmendmentDose.FACT)) {
      table.row(Cell.text(dose.item()), Amounts.cell(plan, dose.amount()), Cell.text(dose.when()));
    }
    return table
        .note("Starting points for the beds together; a laboratory's advice goes before them.")
        .build();
  }
}
