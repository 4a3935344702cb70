package yardloom.work.phase;

import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.work.cost.BillSums;

/** What each phase needs, and when to order it. */
public final class OrdersTable implements TableMaker {
  @Override
  public String id() {
    return "materials-orders-by-phase";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PhaseTime.FACT, PlantingVisit.FACT, YardFacts.BILL, YardFacts.SUPPLIES);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Orders by phase")
            .column(Column.text("phase", "Phase"))
            .column(Column.text("item", "Item"))
            .column(Column.text("order", "Order"))
            .column(Column.of("lead", "Lead, days", Measure.COUNT))
            .column(Column.text("by", "Order by"));
    for (PhaseTime t : facts.all(PhaseTime.FACT)) {
      for (BillLine line :
          BillSums.byItem(
              PhaseOrders.neededIn(t, facts.all(PhaseTime.FACT), facts.all(YardFacts.BILL)))) {
        int lead = PhaseOrders.leadDays(line.item(), facts);
        table.row(
            Cell.text(t.phase().title(plan)),
            Cell.text(line.element().map(e -> line.item() + ", " + e.title()).orElse(line.item())),
            Amounts.cell(plan, line.order()),
            Cell.number(lead),
            PhaseTable.date(PhaseOrders.orderBy(line, t, facts)));
      }
    }
    return table
        .note("Leads are the longest of the sources listed; a week where none is known.")
        .build();
  }
}
