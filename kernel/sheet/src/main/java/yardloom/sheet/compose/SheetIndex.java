package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.sheet.paper.Paper;

/** Lists the sheets of a set with their numbers; a sheet and what it runs on to are one row. */
final class SheetIndex {
  private final int ownPages;
  private final List<Row> rows = new ArrayList<>();
  private int pages;

  private record Row(String title, String scale, Paper paper, int first, int last) {
    String numbers() {
      return first == last ? String.valueOf(first) : first + "\u2013" + last;
    }
  }

  /**
   * @param ownPages how many the sheet with the index takes itself
   */
  SheetIndex(int ownPages) {
    this.ownPages = ownPages;
  }

  static boolean isAskedBy(SheetRequest request) {
    return request.sheet().panels().stream().anyMatch(Panel.SheetIndex.class::isInstance);
  }

  /** The sheet that bears the index; nobody needs a row for what they look at. */
  void itself() {
    pages += ownPages;
  }

  void add(String title, String scale, Paper paper) {
    pages++;
    int last = rows.size() - 1;
    if (last >= 0 && title.equals(SheetComposer.goesOn(rows.get(last).title()))) {
      Row row = rows.get(last);
      rows.set(last, new Row(row.title(), row.scale(), row.paper(), row.first(), pages));
    } else {
      rows.add(new Row(title, scale, paper, pages, pages));
    }
  }

  /** The request with the list in place of the panel that asks for it. */
  SheetRequest in(SheetRequest request) {
    Table.Builder table =
        Table.titled("sheet-index", "Sheets")
            .column(Column.text("sheet", "Sheet"))
            .column(Column.text("title", "Shows"))
            .column(Column.text("scale", "Scale"))
            .column(Column.text("paper", "Paper"));
    for (Row row : rows) {
      table.row(
          Cell.text(row.numbers()),
          Cell.text(row.title()),
          Cell.text(row.scale()),
          Cell.text(row.paper().name()));
    }
    Panel index = new Panel.TableBlock(table.build());
    return request.withPanels(
        request.sheet().panels().stream()
            .map(p -> p instanceof Panel.SheetIndex ? index : p)
            .toList());
  }
}
