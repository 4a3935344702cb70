package yardloom.work.labour;

import java.util.Map;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.spi.Catalogue;
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

  /** A rate for pieces that a job brings. */
  static LocalRate piece(String title, Spread hours) {
    return new LocalRate(LocalRate.Kind.LABOUR, title, LocalRate.PIECE, hours, SourceRef.NONE);
  }

  /** The tasks that have rates, with the unit of each and the hours of one person for one. */
  public static Catalogue catalogue() {
    return new Catalogue(
        "tasks",
        "Tasks, and hours of one person for one unit",
        LABOUR.rows().stream()
            .map(
                row ->
                    new Catalogue.Row(
                        row.text("task"),
                        Map.of(
                            "unit",
                            row.text("unit"),
                            "hours",
                            row.text("low_h")
                                + ", "
                                + row.text("likely_h")
                                + ", "
                                + row.text("high_h"))))
            .toList());
  }

  /** The unit's word, or {@code piece}. */
  public static String unit(String task) {
    return LABOUR.row("task", task).text("unit");
  }
}
