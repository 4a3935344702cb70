package yardloom.materials.sourcing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.ItemSource;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Volume;

/** Where each item of the bill comes from. */
public final class SourcesTable implements TableMaker {
  private static final Source SUM = Source.plan("sum over the phases of the plan");

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
    for (List<BillLine> lines : orders(facts.all(YardFacts.BILL))) {
      String item = lines.get(0).item();
      Derived<?> order = ordered(lines);
      for (ItemSource supply : facts.all(YardFacts.SUPPLIES)) {
        if (supply.item().equals(item)) {
          table.row(
              Cell.text(item),
              Amounts.cell(plan, order),
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

  /** Bulk of all phases is asked for in one call; what is counted stands by itself. */
  private static List<List<BillLine>> orders(List<BillLine> bill) {
    Set<String> summed = new HashSet<>();
    List<List<BillLine>> orders = new ArrayList<>();
    for (BillLine line : bill) {
      if (!isBulk(line)) {
        orders.add(List.of(line));
      } else if (summed.add(line.item())) {
        orders.add(bill.stream().filter(l -> isBulk(l) && l.item().equals(line.item())).toList());
      }
    }
    return orders;
  }

  private static boolean isBulk(BillLine line) {
    return line.order().value() instanceof Volume;
  }

  /** What is ordered of an item over all phases. */
  private static Derived<?> ordered(List<BillLine> lines) {
    if (lines.size() == 1) {
      return lines.get(0).order();
    }
    Derived.Builder why = Derived.by("sum over phases", SUM);
    Volume sum = Volume.ZERO;
    for (BillLine line : lines) {
      why.from("order of " + line.phase().title(), line.order());
      sum = sum.plus((Volume) line.order().value());
    }
    return why.gives(sum);
  }
}
