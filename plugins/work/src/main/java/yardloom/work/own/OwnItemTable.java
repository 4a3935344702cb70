package yardloom.work.own;

import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Amounts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Unit;
import yardloom.work.labour.OwnItem;

/** What the plan counts itself, and who says so. */
public final class OwnItemTable implements TableMaker {
  @Override
  public String id() {
    return "work-own-items";
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Items and tasks of the plan's own")
            .column(Column.text("item", "Item or task"))
            .column(Column.text("phase", "For"))
            .column(Column.text("amount", "Amount"))
            .column(Column.text("per", "Hours are for one"))
            .column(Column.of("hours", "Hours of one person", Measure.HOURS))
            .column(Column.text("source", "By"));
    for (var entry : plan.attributes().all(OwnItem.KEY)) {
      OwnItem item = entry.value();
      Derived<TimeSpan> hours =
          Derived.given(TimeSpan.hours(item.hoursPerUnit()), "hours", entry.place());
      table.row(
          Cell.text(item.name()),
          Cell.text(item.phase().title(plan)),
          Amounts.cell(plan, item.amount()),
          Cell.text(Unit.byWord(item.unit()).map(Unit::symbol).orElse(item.unit())),
          item.hoursPerUnit() == 0 ? Cell.BLANK : Cell.of(hours),
          Cell.text(item.source().cite()));
    }
    return table.build();
  }
}
