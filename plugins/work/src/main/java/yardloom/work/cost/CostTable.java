package yardloom.work.cost;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Cost of every priced line. */
public final class CostTable implements TableMaker {
  /** Printed beside invented prices. */
  static final String DEMO =
      "Prices marked so in the appendix are invented for demonstration: put your own in with"
          + " `price` or `priceBook`.";

  @Override
  public String id() {
    return "materials-cost";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CostEstimate.FACT);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Cost range")
            .column(Column.text("item", "Item"))
            .column(Column.of("p10", "Low (P10)", Measure.MONEY))
            .column(Column.of("p50", "Likely (P50)", Measure.MONEY))
            .column(Column.of("p90", "High (P90)", Measure.MONEY));
    Optional<CostEstimate> found = facts.find(CostEstimate.FACT);
    if (found.isEmpty()) {
      return table.build();
    }
    CostEstimate cost = found.get();
    cost.rows().forEach(r -> table.row(cells(r)));
    table.total(cells(cost.total()));
    if (cost.demo()) {
      table.note(DEMO);
    }
    if (!cost.unpriced().isEmpty()) {
      table.note("Not priced: " + String.join(", ", cost.unpriced()) + ".");
    }
    return table
        .note(
            "One in ten cases lies below P10, one in ten above P90; rows do not add up to the"
                + " total's percentiles, because not everything goes wrong at once.")
        .note("Without taxes, permits, disposal and hired machines.")
        .build();
  }

  private static Cell[] cells(CostEstimate.Row row) {
    return new Cell[] {
      Cell.text(row.item()), Cell.of(row.p10()), Cell.of(row.p50()), Cell.of(row.p90())
    };
  }
}
