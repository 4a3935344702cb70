package yardloom.work.phase;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** On which days the crew comes to water and weed, and why then. */
public final class CareVisitTable implements TableMaker {
  @Override
  public String id() {
    return "care-visits";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareVisit.FACT);
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
        Table.titled(id(), "Visits to look after the plants")
            .column(Column.of("visit", "Visit", Measure.COUNT))
            .column(Column.text("date", "Date"))
            .column(Column.text("why", "Why then"));
    List<CareVisit> visits = facts.all(CareVisit.FACT);
    visits.forEach(v -> table.row(Cell.number(v.number()), Cell.of(v.date()), Cell.text(v.why())));
    if (!visits.isEmpty()) {
      table.note(
          "One, two, four and six weeks after each planting, but in months that freeze, the rest"
              + " spread over the months in which the plants need more than it rains (common"
              + " practice). Where the visits do not suffice for both, a quarter is kept for the"
              + " dry months; `work visits:` gives more. The household waters between the visits.");
    }
    return table.build();
  }
}
