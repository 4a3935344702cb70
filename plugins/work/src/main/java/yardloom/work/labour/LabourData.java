package yardloom.work.labour;

import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** The shipped hours by task. */
public final class LabourData {
  private static final DataTable LABOUR = DataTable.shipped(LabourData.class, "labour.csv");

  private LabourData() {}

  /** Hours of one person for one unit of the task. */
  public static Spread hours(String task) {
    DataRow row = LABOUR.row("task", task);
    return new Spread(
        row.number("low_h"),
        row.number("likely_h"),
        row.number("high_h"),
        "pace of work",
        row.source());
  }

  /** The shipped rate of a task. */
  static LocalRate labour(String task) {
    return new LocalRate(LocalRate.Kind.LABOUR, task, unit(task), hours(task), SourceRef.NONE);
  }

  /** The unit's word, or {@code piece}. */
  public static String unit(String task) {
    return LABOUR.row("task", task).text("unit");
  }
}
