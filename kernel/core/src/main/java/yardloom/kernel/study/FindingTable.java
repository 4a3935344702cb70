package yardloom.kernel.study;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.vocab.Choices;

/**
 * The findings that a reader of the sheets has to act on or sees marked there, with the numbers of
 * the marks. Plain notes stand in the list of findings only.
 */
final class FindingTable {
  private FindingTable() {}

  /** The table of the sorted {@code findings}; nothing if there is none to show. */
  static Optional<Table> of(List<Finding> findings) {
    Table.Builder table =
        Table.titled("findings", "Findings")
            .column(Column.text("number", "No."))
            .column(Column.text("finding", "Finding"))
            .column(Column.text("do", "What to do"));
    for (int i = 0; i < findings.size(); i++) {
      Finding f = findings.get(i);
      if (f.ground().isPresent() || f.severity() != Severity.NOTE) {
        String about = f.element().map(id -> id + ": ").orElse("");
        table.row(
            Cell.text("(" + (i + 1) + ")"),
            Cell.text(Choices.text(f.severity()) + ": " + about + f.text()),
            f.advice().isBlank() ? Cell.BLANK : Cell.text(f.advice()));
      }
    }
    return Optional.of(table.build()).filter(t -> !t.isEmpty());
  }
}
