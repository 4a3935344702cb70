package yardloom.work.crew;

import java.util.List;
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
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.work.cost.BillSums;
import yardloom.work.phase.PhaseOrders;
import yardloom.work.phase.PhaseTime;

/** What is laid and what must be there, under a heading for each phase. */
final class CrewTables {
  private final Plan plan;
  private final Facts facts;

  CrewTables(Plan plan, Facts facts) {
    this.plan = plan;
    this.facts = facts;
  }

  /** What of each stack is laid in which phase, from the ground up. */
  Table layers(List<PhaseTime> phases) {
    Table.Builder table =
        Table.titled("crew-layers", "Lay, by phase and surface")
            .column(Column.text("surface", "Surface"))
            .column(Column.text("layer", "Layer"))
            .column(Column.of("depth", "Deep", Measure.DEPTH))
            .column(Column.text("amount", "Amount"));
    for (PhaseTime time : phases) {
      boolean named = false;
      for (Surface s : facts.all(YardFacts.SURFACES)) {
        for (Course course : s.courses()) {
          if (course.phase() == time.phase().id()) {
            if (!named) {
              table.heading(time.phase().title());
              named = true;
            }
            row(table, s, course);
          }
        }
      }
    }
    return table.build();
  }

  private void row(Table.Builder table, Surface s, Course course) {
    boolean sheets = course.material() == Material.CARDBOARD && s.sheets().isPresent();
    table.row(
        Cell.text(s.of().name()),
        Cell.text(course.material().title()),
        course.depth().map(Cell::of).orElse(Cell.BLANK),
        sheets
            ? Cell.text(s.sheets().get().value() + " sheets")
            : Amounts.cell(plan, course.amount()));
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
      List<BillLine> lines =
          BillSums.byItem(PhaseOrders.neededIn(time, facts.all(YardFacts.BILL)));
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
