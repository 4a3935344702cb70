package yardloom.materials.data;

import java.util.Arrays;
import java.util.List;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.materials.model.Phase;
import yardloom.materials.model.Spread;

/** Hours by task, and the phases in the trade's order. */
public final class WorkData {
  private static final DataTable LABOUR = DataTable.shipped(WorkData.class, "labour.csv");
  private static final List<Phase> PHASES =
      DataTable.shipped(WorkData.class, "phase.csv").rows().stream().map(WorkData::phase).toList();

  private WorkData() {}

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

  /** The unit's word, or {@code piece}. */
  public static String unit(String task) {
    return LABOUR.row("task", task).text("unit");
  }

  public static List<Phase> phases() {
    return PHASES;
  }

  private static Phase phase(DataRow row) {
    return new Phase(
        row.text("id"),
        row.text("title"),
        split(row.text("after"), ";"),
        (int) row.number("days_least"),
        split(row.text("groups"), ";"),
        split(row.text("steps"), "\\|"),
        split(row.text("tools"), "\\|"),
        split(row.text("cautions"), "\\|"));
  }

  private static List<String> split(String text, String by) {
    return Arrays.stream(text.split(by)).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }
}
