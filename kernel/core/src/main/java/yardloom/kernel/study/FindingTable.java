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
    for (FindingGroup group : FindingGroup.of(findings)) {
      Finding f = group.first();
      boolean marked = group.all().stream().anyMatch(one -> one.ground().isPresent());
      if (marked || f.severity() != Severity.NOTE) {
        table.row(
            Cell.text("(" + group.number() + ")"),
            Cell.text(Choices.text(f.severity()) + ": " + group.about() + f.text()),
            f.advice().isBlank() ? Cell.BLANK : Cell.text(f.advice()));
      }
    }
    return Optional.of(table.build()).filter(t -> !t.isEmpty());
  }
}
