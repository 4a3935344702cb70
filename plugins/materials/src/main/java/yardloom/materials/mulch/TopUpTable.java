package yardloom.materials.mulch;

import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.materials.mulch.formula.Settling;

/** Chips to add in the years after. */
public final class TopUpTable implements TableMaker {
  @Override
  public String id() {
    return "materials-top-up";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.TOP_UPS);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.WORK_COST);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Chips to add by year")
            .column(Column.of("year", "Year", Measure.COUNT))
            .column(Column.of("add", "Add", Measure.VOLUME));
    facts.all(YardFacts.TOP_UPS).forEach(t -> table.row(Cell.number(t.year()), Cell.of(t.add())));
    return table.note(Settling.SOURCE.cite() + ".").build();
  }
}
