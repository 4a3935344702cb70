package yardloom.program.report;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;
import yardloom.sheet.compose.PaperWords;

/**
 * A table as the page shows it.
 *
 * @param sortable whether there are rows enough to be put in another order
 * @param bodies runs of rows, each under its heading where the table has headings; rows are sorted
 *     within their run
 */
record TableView(
    String id,
    String title,
    boolean sortable,
    List<Head> heads,
    List<Body> bodies,
    List<Row> totals,
    List<String> notes) {

  /** A column's heading; its index tells the script what to sort by. */
  record Head(int index, String text, String align) {}

  /** Rows under one heading; {@code heading} is empty for rows without one. */
  record Body(String heading, int columns, List<Row> rows) {}

  /** The first cell names the row. */
  record Row(CellView name, List<CellView> cells) {}

  /**
   * @param key what to sort by, where it is not the text
   */
  record CellView(String text, String align, String key) {}

  boolean hasTotals() {
    return !totals.isEmpty();
  }

  boolean hasBodies() {
    return !bodies.isEmpty();
  }

  static TableView of(Table table, TableFormat format, PaperWords words) {
    List<Head> heads = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      heads.add(new Head(i, words.of(format.header(column)), align(column)));
    }
    int end = table.rows().size() - table.totals();
    List<Body> bodies = new ArrayList<>();
    List<Row> totals = new ArrayList<>();
    String heading = "";
    List<Row> run = new ArrayList<>();
    for (int i = 0; i < table.rows().size(); i++) {
      if (i < end && table.isHeading(i)) {
        add(bodies, heading, heads.size(), run);
        heading = words.of(format.text(table.columns().get(0), table.rows().get(i).get(0)));
        run = new ArrayList<>();
      } else {
        (i < end ? run : totals).add(row(table, i, format, words));
      }
    }
    add(bodies, heading, heads.size(), run);
    return new TableView(
        "table-" + table.id(),
        words.of(table.title()),
        bodies.stream().anyMatch(b -> b.rows().size() > 2),
        heads,
        bodies,
        totals,
        table.notes().stream().map(words::of).toList());
  }

  private static void add(List<Body> bodies, String heading, int columns, List<Row> rows) {
    if (!heading.isEmpty() || !rows.isEmpty()) {
      bodies.add(new Body(heading, columns, rows));
    }
  }

  private static Row row(Table table, int row, TableFormat format, PaperWords words) {
    List<CellView> cells = new ArrayList<>();
    for (int i = 0; i < table.columns().size(); i++) {
      Column column = table.columns().get(i);
      Cell cell = table.rows().get(row).get(i);
      cells.add(
          new CellView(
              words.cell(format.text(column, cell)), align(column), key(column, cell, format)));
    }
    return new Row(cells.get(0), cells.subList(1, cells.size()));
  }

  private static String key(Column column, Cell cell, TableFormat format) {
    Object value = cell.value().orElse("");
    if (value instanceof LocalDate || value instanceof MonthDay) {
      return value.toString();
    }
    boolean number = value instanceof Number || value instanceof Quantity<?>;
    return number && column.measure().isNumber() ? format.plain(column, cell) : "";
  }

  private static String align(Column column) {
    return column.measure().isNumber() ? "number" : "words";
  }
}
