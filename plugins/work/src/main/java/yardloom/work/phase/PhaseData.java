package yardloom.work.phase;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** The shipped phases in the trade's order. */
public final class PhaseData {
  private static final List<Phase> PHASES =
      DataTable.shipped(PhaseData.class, "phase.csv").rows().stream()
          .map(PhaseData::phase)
          .toList();

  private PhaseData() {}

  public static List<Phase> phases() {
    return PHASES;
  }

  private static Phase phase(DataRow row) {
    return new Phase(
        WorkPhase.valueOf(row.text("id").toUpperCase(Locale.ROOT)),
        split(row.text("after"), ";").stream()
            .map(id -> WorkPhase.valueOf(id.toUpperCase(Locale.ROOT)))
            .toList(),
        (int) row.number("days_least"),
        split(row.text("steps"), "\\|"),
        split(row.text("tools"), "\\|"),
        split(row.text("cautions"), "\\|"));
  }

  private static List<String> split(String text, String by) {
    return Arrays.stream(text.split(by)).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }
}
