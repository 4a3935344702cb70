package yardloom.work.delivery;

import java.util.List;
import java.util.Set;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** Which truck comes on which day, and what it tips where. */
public final class DeliveryTable implements TableMaker {
  @Override
  public String id() {
    return "work-deliveries";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Delivery.FACT);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.MATERIALS);
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
    List<Delivery> all = facts.all(Delivery.FACT);
    Table.Builder table =
        Table.titled(id(), "Deliveries, load by load")
            .column(Column.of("load", "Load", Measure.COUNT))
            .column(Column.text("item", "Item"))
            .column(Column.text("phase", "For"))
            .column(Column.of("volume", "Tipped", Measure.VOLUME))
            .column(Column.text("spot", "On"))
            .column(Column.of("day", "Working day", Measure.COUNT))
            .column(Column.text("date", "Date"))
            .column(Column.text("when", "When"));
    for (Delivery d : all) {
      table.row(
          Cell.number(d.number()),
          Cell.text(d.item()),
          Cell.text(d.phase().title(plan)),
          Cell.of(d.load()),
          d.spot().map(Cell::text).orElse(Cell.BLANK),
          Cell.number(d.day()),
          d.date().map(Cell::of).orElse(Cell.BLANK),
          Cell.text(d.said()));
    }
    if (all.isEmpty()) {
      return table.build();
    }
    table.note(
        "One heap at a time on a spot: each load is tipped once the one before it there is spread,"
            + " at an even pace through the phase. Call the driver when half of a heap is left; put"
            + " a tarp under compost and under what is tipped on pavers, and over what lies"
            + " overnight.");
    if (all.stream().anyMatch(d -> d.load().compareTo(BulkLoads.LEAST) < 0)) {
      table.note("Less than 1 cu yd (0.8 m³) is fetched by pickup or trailer, or comes in bags.");
    }
    if (all.stream().anyMatch(d -> d.spot().isEmpty())) {
      table.note("No drop zone is named: agree on a spot before the first truck.");
    }
    return table.build();
  }
}
