package yardloom.work.crew;

import java.util.List;
import java.util.stream.Collectors;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Course;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.Surface;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.work.cost.BillSums;
import yardloom.work.phase.PhaseOrders;
import yardloom.work.phase.PhaseTime;

/** What is laid and what must be there, under a heading for each phase. */
final class CrewTables {
  private static final Column AMOUNT = Column.text("amount", "Amount");

  private final Plan plan;
  private final Facts facts;
  private final TableFormat format;

  CrewTables(Plan plan, Facts facts) {
    this.plan = plan;
    this.facts = facts;
    this.format = new TableFormat(plan.info().units(), plan.info().currency());
  }

  /** What of each stack is laid in which phase, from the ground up; a row for each surface. */
  Table layers(List<PhaseTime> phases) {
    Table.Builder table =
        Table.titled("crew-layers", "Lay, by phase and surface")
            .column(Column.text("surface", "Surface"))
            .column(Column.text("layers", "Layers, from the ground up"));
    for (PhaseTime time : phases) {
      boolean named = false;
      for (Surface s : facts.all(YardFacts.SURFACES)) {
        String laid =
            s.courses().stream()
                .filter(c -> c.phase() == time.phase().id())
                .map(c -> text(s, c))
                .collect(Collectors.joining("; "));
        if (!laid.isEmpty()) {
          if (!named) {
            table.heading(time.phase().title());
            named = true;
          }
          table.row(Cell.text(s.of().name()), Cell.text(laid));
        }
      }
    }
    return table.build();
  }

  /** Such as {@code 3 in compost, 0.8 cu yd}. */
  private String text(Surface s, Course course) {
    String material = course.material().title();
    if (course.material() == Material.CARDBOARD && s.sheets().isPresent()) {
      int sheets = s.sheets().get().value();
      return sheets + (sheets == 1 ? " sheet of " : " sheets of ") + material;
    }
    String depth =
        course.depth().map(d -> Say.depth(d.value(), plan.info().units()) + " ").orElse("");
    String amount = format.text(AMOUNT, Amounts.cell(plan, course.amount()));
    return depth + material + (amount.isEmpty() ? "" : ", " + amount);
  }

  /** What to order and have on site, with a box to tick. */
  Table needed(List<PhaseTime> phases) {
    Table.Builder table =
        Table.titled("crew-needs", "Order and have on site")
            .column(Column.text("item", "Item"))
            .column(Column.text("amount", "Amount"))
            .column(Column.text("by", "Order by"))
            .column(Column.text("there", "There"));
    for (PhaseTime time : phases) {
      List<BillLine> lines = BillSums.byItem(PhaseOrders.neededIn(time, facts.all(YardFacts.BILL)));
      if (!lines.isEmpty()) {
        table.heading(time.phase().title());
      }
      for (BillLine line : lines) {
        int lead = PhaseOrders.leadDays(line.item(), facts);
        table.row(
            Cell.text(line.item()),
            Amounts.cell(plan, line.order()),
            PhaseOrders.orderBy(line, time, facts)
                .map(Cell::of)
                .orElseGet(() -> Cell.text(lead + " days ahead")),
            Cell.text("[  ]"));
      }
    }
    return table.build();
  }
}
