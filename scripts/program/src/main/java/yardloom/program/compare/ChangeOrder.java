package yardloom.program.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/**
 * The changes that both sides sign, numbered: elements first, with the numbers of the sheet, then
 * orders, hours and cost.
 */
final class ChangeOrder {
  private final Comparison comparison;
  private final ThingWords words;
  private final List<Line> lines = new ArrayList<>();

  /** A numbered change; the number is its place in the list, from 1. */
  record Line(String what, String old, String now, String difference) {}

  private ChangeOrder(Comparison comparison, TableFormat format) {
    this.comparison = comparison;
    this.words = new ThingWords(format);
  }

  /**
   * The changes in the order of their numbers; those of elements as {@link Comparison} has them.
   */
  static List<Line> lines(Comparison comparison, TableFormat format) {
    ChangeOrder order = new ChangeOrder(comparison, format);
    comparison.things().forEach(order::thing);
    comparison
        .figures(Comparison.ORDERS, "order")
        .forEach(f -> order.figure("order: " + f.row(), f));
    comparison.hoursByPhase().forEach(order::hours);
    comparison
        .figures(Comparison.COST, "p50")
        .forEach(f -> order.figure("likely cost, " + format.currency() + ": " + f.row(), f));
    return List.copyOf(order.lines);
  }

  /** The changes as a table with a column to sign in. */
  static Table table(Comparison comparison, TableFormat format) {
    Table.Builder table =
        Table.titled("change-order", "Change order")
            .column(Column.text("number", "No."))
            .column(Column.text("what", "What"))
            .column(Column.text("old", "Old"))
            .column(Column.text("new", "New"))
            .column(Column.text("difference", "Difference"))
            .column(Column.text("agreed", "Agreed (initials, date)"));
    int number = 1;
    for (Line line : lines(comparison, format)) {
      table.row(
          Cell.text(Integer.toString(number++)),
          Cell.text(line.what()),
          Cell.text(line.old()),
          Cell.text(line.now()),
          Cell.text(line.difference()),
          // A column of blank cells would be left out of the sheet.
          Cell.text("____________"));
    }
    return table
        .note("Differences are those of the printed numbers. Costs are likely values, not offers.")
        .build();
  }

  private void thing(ThingChange change) {
    lines.add(
        new Line(
            ThingWords.what(change),
            words.old(change),
            words.now(change),
            words.difference(change)));
  }

  private void figure(String what, FigureChange figure) {
    lines.add(new Line(what, figure.old(), figure.now(), figure.differenceText()));
  }

  private void hours(String phase, Comparison.Sums sums) {
    lines.add(
        new Line(
            "likely hours: " + phase,
            sums.old().toPlainString() + " h",
            sums.now().toPlainString() + " h",
            ShownNumber.signed(sums.now().subtract(sums.old()), "") + " h"));
  }

  /** Every figure that is other, for a spreadsheet. */
  static Table figures(Comparison comparison) {
    Table.Builder table =
        Table.titled("differences", "Differences")
            .column(Column.text("table", "Table"))
            .column(Column.text("row", "Row"))
            .column(Column.text("column", "Column"))
            .column(Column.text("old", "Old"))
            .column(Column.text("new", "New"))
            .column(Column.text("difference", "Difference"));
    for (FigureChange f : comparison.figures()) {
      table.row(
          List.of(f.table().id(), f.row(), f.column().title(), f.old(), f.now(), f.differenceText())
              .stream()
              .map(Cell::text)
              .toList());
    }
    return table.build();
  }

  /** How many figures are other by title of their table. */
  static Map<String, Long> count(Comparison comparison) {
    return comparison.figures().stream()
        .collect(
            Collectors.groupingBy(f -> f.table().title(), TreeMap::new, Collectors.counting()));
  }
}
