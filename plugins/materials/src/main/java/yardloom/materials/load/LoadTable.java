package yardloom.materials.load;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Truckloads and weight of every bulk order, each as a range. */
public final class LoadTable implements TableMaker {
  @Override
  public String id() {
    return "materials-loads";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.LOADS);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Loads and weight")
            .column(Column.text("item", "Item"))
            .column(Column.text("phase", "For"))
            .column(Column.of("order", "Order", Measure.VOLUME))
            .column(Column.of("loads-least", "Loads, big trucks", Measure.COUNT))
            .column(Column.of("loads", "Loads, likely", Measure.COUNT))
            .column(Column.of("loads-most", "Loads, small trucks", Measure.COUNT))
            .column(Column.of("weight-low", "Weight, dry", Measure.MASS))
            .column(Column.of("weight-high", "Weight, wet", Measure.MASS));
    for (BulkLoads loads : facts.all(YardFacts.LOADS)) {
      table.row(
          Cell.text(loads.item()),
          Cell.text(loads.phase().title(plan)),
          Cell.of(loads.order()),
          Cell.of(loads.fewest()),
          Cell.of(loads.likely()),
          Cell.of(loads.most()),
          Cell.of(loads.lightest()),
          Cell.of(loads.heaviest()));
    }
    return table
        .note("Free chips come by the whole load: ask the crew how much its truck holds.")
        .note("Order the last load once the others are spread.")
        .note("A rest of up to a tenth of a load is heaped on the others.")
        .build();
  }
}
