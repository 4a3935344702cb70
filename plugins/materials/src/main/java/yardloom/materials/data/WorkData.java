package yardloom.materials.data;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.materials.model.Phase;

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

  /** The shipped rate of a task. */
  static LocalRate labour(String task) {
    return new LocalRate(LocalRate.Kind.LABOUR, task, unit(task), hours(task), SourceRef.NONE);
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
        WorkPhase.valueOf(row.text("id").toUpperCase(Locale.ROOT)),
        row.text("title"),
        split(row.text("after"), ";").stream()
            .map(id -> WorkPhase.valueOf(id.toUpperCase(Locale.ROOT)))
            .toList(),
        (int) row.number("days_least"),
        row.text("when").equals("always"),
        split(row.text("steps"), "\\|"),
        split(row.text("tools"), "\\|"),
        split(row.text("cautions"), "\\|"));
  }

  private static List<String> split(String text, String by) {
    return Arrays.stream(text.split(by)).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }
}
