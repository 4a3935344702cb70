package yardloom.materials;

import java.util.Set;
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
import yardloom.materials.calc.Loads;

/** What to order, with allowance, weight and truckloads as low, likely and high. */
final class OrderTable implements TableMaker {
  @Override
  public String id() {
    return "materials-order";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Materials to order")
            .column(Column.text("item", "Item"))
            .column(Column.of("exact", "Exact", Measure.VOLUME))
            .column(Column.of("order", "Order", Measure.VOLUME))
            .column(Column.of("exact-count", "Exact pieces", Measure.COUNT))
            .column(Column.of("order-count", "Order pieces", Measure.COUNT))
            .column(Column.of("loads-least", "Loads, big trucks", Measure.COUNT))
            .column(Column.of("loads", "Loads, likely", Measure.COUNT))
            .column(Column.of("loads-most", "Loads, small trucks", Measure.COUNT))
            .column(Column.of("weight-low", "Weight, dry", Measure.MASS))
            .column(Column.of("weight-high", "Weight, wet", Measure.MASS))
            .column(Column.text("allowance", "Allowance"));
    for (BillLine line : facts.all(YardFacts.BILL)) {
      if (line.group().equals(BillCalculator.GROUP)) {
        addRow(table, line);
      }
    }
    return table
        .note(
            "Exact is what lies in place; order adds the allowance and rounds up to what is sold.")
        .note("Free chips come by the whole load: ask the crew how many yards its truck holds.")
        .build();
  }

  private static void addRow(Table.Builder table, BillLine line) {
    if (line.order().value() instanceof Volume order) {
      Loads loads = Loads.of(line.item(), line.order().map(v -> order));
      table.row(
          Cell.text(line.item()),
          Cell.of(line.exact()),
          Cell.of(line.order()),
          Cell.BLANK,
          Cell.BLANK,
          Cell.of(loads.fewest()),
          Cell.of(loads.likely()),
          Cell.of(loads.most()),
          Cell.of(loads.lightest()),
          Cell.of(loads.heaviest()),
          Cell.text(line.allowance()));
    } else {
      table.row(
          Cell.text(line.item()),
          Cell.BLANK,
          Cell.BLANK,
          Cell.of(line.exact()),
          Cell.of(line.order()),
          Cell.BLANK,
          Cell.BLANK,
          Cell.BLANK,
          Cell.BLANK,
          Cell.BLANK,
          Cell.text(line.allowance()));
    }
  }
}
