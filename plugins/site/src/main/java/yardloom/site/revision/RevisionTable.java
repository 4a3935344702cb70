package yardloom.site.revision;

import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** The revisions of the plan, oldest first: the last row is the state that the sheets show. */
public final class RevisionTable implements TableMaker {
  @Override
  public String id() {
    return "revisions";
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.COVER);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.ALWAYS;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Revisions")
            .column(Column.text("revision", "Revision"))
            .column(Column.text("date", "Date"))
            .column(Column.text("what", "What was changed"));
    plan.attributes()
        .all(Revision.KEY)
        .forEach(
            e ->
                table.row(
                    Cell.text(e.value().name()),
                    Cell.of(e.value().date()),
                    Cell.text(e.value().what())));
    return table.build();
  }
}
