package yardloom.program.batch;

import java.util.List;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/** What the summary says about a lot that is drawn. */
public final class LotFigures {
  private LotFigures() {}

  public static LotResult of(LotRow lot, Outcome outcome) {
    Plan plan = outcome.plan();
    TableFormat format = TableFormat.of(plan.info());
    return LotResult.drawn(
        lot.name(),
        count(outcome, Severity.ERROR),
        count(outcome, Severity.WARNING),
        plan.lot().map(l -> format.withUnit(l.shape().area())).orElse(""),
        total(outcome, format, "materials-labour", "likely"),
        total(outcome, format, "materials-cost", "p50"));
  }

  private static int count(Outcome outcome, Severity severity) {
    return (int) outcome.findings().stream().filter(f -> f.severity() == severity).count();
  }

  /** What the last row of a table, its total, says in a column; empty if there is none. */
  private static String total(Outcome outcome, TableFormat format, String id, String column) {
    for (Table table : outcome.tables()) {
      for (int c = 0; table.id().equals(id) && c < table.columns().size(); c++) {
        if (table.columns().get(c).id().equals(column)) {
          List<Cell> last = table.rows().get(table.rows().size() - 1);
          return format.plain(table.columns().get(c), last.get(c));
        }
      }
    }
    return "";
  }
}
