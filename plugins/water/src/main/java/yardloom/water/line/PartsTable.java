package yardloom.water.line;

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
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;

/** What to buy for the dripline. */
public final class PartsTable implements TableMaker {
  @Override
  public String id() {
    return "irrigation-parts";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  /** What is bought in another year is counted there. */
  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Irrigation parts")
            .column(Column.text("item", "Item"))
            .column(Column.of("exact", "Length", Measure.LENGTH))
            .column(Column.of("order", "Order length", Measure.LENGTH))
            .column(Column.of("pieces", "Order pieces", Measure.COUNT))
            .column(Column.text("allowance", "Allowance"));
    boolean any = false;
    for (BillLine line : facts.all(YardFacts.BILL)) {
      if (line.group() == BillGroup.IRRIGATION) {
        boolean tube = line.order().value() instanceof Length;
        table.row(
            Cell.text(line.item()),
            tube ? Cell.of(line.exact()) : Cell.BLANK,
            tube ? Cell.of(line.order()) : Cell.BLANK,
            tube ? Cell.BLANK : Cell.of(line.order()),
            Cell.text(line.allowance()));
        any = true;
      }
    }
    if (any) {
      table.note(
          "Counted from the lines that are drawn: a tee at each fork, an elbow at each bend of more"
              + " than 30°, a stake every 3 ft (0.9 m) of dripline.");
    }
    return table.build();
  }
}
