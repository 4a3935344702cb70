package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.Xy;

/**
 * Sets a table: headings with units, numbers aligned right, rules above and below, totals set off.
 *
 * <p>Text columns wrap when room is short, numbers never. A heading of rows runs across and stays
 * with the row below it. A table wider than the sheet is cut into tables that repeat the first
 * column.
 */
final class TableBlock {
  private static final double SIDE_PADDING_MM = 1.6;
  private static final double PAGE_SIDE_PADDING_MM = 1.1;
  private static final double ROW_PADDING_PER_LETTER = 0.19;
  private static final double PAGE_ROW_PADDING_MM = 0.1;

  /** Set between numbers, which end right, and a text that begins left of them. */
  private static final double AFTER_NUMBER_MM = 2;

  private static final double HEADING_SHARE = 0.58;

  private static final int MOST_LINES_OF_A_ROW = 12;
  private static final int SHARED_UNIT_COLUMNS = 4;
  private static final Style RULE = Style.line("table-rule", Palette.INK, 0.25);
  private static final Style HAIRLINE = Style.line("table-hairline", Palette.RULE, 0.13);

  private final Table table;
  private final Type type;
  private final String title;
  private final List<String> headings = new ArrayList<>();
  private final List<List<String>> texts = new ArrayList<>();
  private final ColumnWidths columns;

  private TableBlock(Table table, TableFormat format, Type type) {
    this.table = table;
    this.type = type;
    int n = table.columns().size();
    Optional<String> shared = sharedUnit(table, format);
    title = table.title() + shared.map(u -> ", " + u).orElse("");
    for (Column column : table.columns()) {
      headings.add(shared.isPresent() ? TableFormat.title(column) : format.header(column));
    }
    for (List<Cell> row : table.rows()) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        cells.add(format.text(table.columns().get(i), row.get(i)));
      }
      texts.add(cells);
    }
    columns = new ColumnWidths(new double[n], new double[n]);
    for (int i = 0; i < n; i++) {
      measure(i);
    }
  }

  /** The one unit of many columns: it is said once, in the title, not in every heading. */
  private static Optional<String> sharedUnit(Table table, TableFormat format) {
    List<String> units =
        table.columns().stream().map(format::unit).filter(unit -> !unit.isEmpty()).toList();
    boolean shared = units.size() >= SHARED_UNIT_COLUMNS && units.stream().distinct().count() == 1;
    return shared ? Optional.of(units.get(0)) : Optional.empty();
  }

  private void measure(int i) {
    boolean number = isNumber(i);
    double leastWidth = type.longestWord(headings.get(i), type.body(), true);
    // A heading over numbers runs over two lines at best; over text it may run out.
    double heading = type.width(headings.get(i), type.body(), true);
    double naturalWidth = Math.max(leastWidth, number ? heading * HEADING_SHARE : heading);
    for (int r = 0; r < texts.size(); r++) {
      if (isHeading(r)) {
        continue;
      }
      String text = texts.get(r).get(i);
      double width = type.width(text, type.body(), isTotal(r));
      naturalWidth = Math.max(naturalWidth, width);
      leastWidth =
          Math.max(leastWidth, number ? width : type.longestWord(text, type.body(), isTotal(r)));
    }
    columns.leastMm()[i] = leastWidth + leftPadding(i) + sidePaddingMm();
    columns.naturalMm()[i] = naturalWidth + leftPadding(i) + sidePaddingMm();
  }

  private double leftPadding(int i) {
    boolean afterNumber = i > 0 && isNumber(i - 1) && !isNumber(i);
    return sidePaddingMm() + (afterNumber ? AFTER_NUMBER_MM : 0);
  }

  private boolean isNumber(int column) {
    return table.columns().get(column).measure().isNumber();
  }

  private boolean isHeading(int row) {
    return !isTotal(row) && table.isHeading(row);
  }

  private boolean isTotal(int row) {
    return row >= table.rows().size() - table.totals();
  }

  /** The blocks for a table on a sheet that offers at most {@code maxWidthMm}. */
  static List<Block> of(Table table, TableFormat format, Type type, double maxWidthMm) {
    Table shown = SheetTable.of(table, format);
    TableBlock whole = new TableBlock(shown, format, type);
    if (whole.columns.sumOfLeast() <= maxWidthMm || shown.columns().size() <= 2) {
      return List.of(whole.block(maxWidthMm));
    }
    List<Block> parts = new ArrayList<>();
    int from = 1;
    while (from < shown.columns().size()) {
      double[] least = whole.columns.leastMm();
      double width = least[0];
      int to = from;
      while (to < shown.columns().size() && (to == from || width + least[to] <= maxWidthMm)) {
        width += least[to++];
      }
      boolean last = to == shown.columns().size();
      parts.add(new TableBlock(columns(shown, from, to, last), format, type).block(maxWidthMm));
      from = to;
    }
    return parts;
  }

  private static Table columns(Table table, int from, int to, boolean last) {
    List<Column> columns = new ArrayList<>();
    columns.add(table.columns().get(0));
    columns.addAll(table.columns().subList(from, to));
    List<List<Cell>> rows = new ArrayList<>();
    for (List<Cell> row : table.rows()) {
      List<Cell> cells = new ArrayList<>();
      cells.add(row.get(0));
      cells.addAll(row.subList(from, to));
      rows.add(cells);
    }
    return new Table(
        table.id(), table.title(), columns, rows, last ? table.notes() : List.of(), table.totals());
  }

  /** Pages held in the hand are set closer. */
  private double rowPaddingMm() {
    return type.isOfPages() ? PAGE_ROW_PADDING_MM : ROW_PADDING_PER_LETTER * type.body();
  }

  private double sidePaddingMm() {
    return type.isOfPages() ? PAGE_SIDE_PADDING_MM : SIDE_PADDING_MM;
  }

  private Block block(double maxWidthMm) {
    return new Stack(
        "table-" + table.id(),
        title,
        Math.min(columns.comfortable(type.body()), maxWidthMm),
        false,
        type,
        this::content,
        0);
  }

  private Stack.Content content(double width) {
    double[] widths = columns.of(width);
    List<Stack.Row> body = body(widths, width);
    int headed = body.size();
    body.addAll(notes(width));
    return new Stack.Content(head(widths), body, headed);
  }

  private List<Stack.Row> head(double[] widths) {
    List<List<String>> cells = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      cells.add(wrapped(headings.get(i), i, widths[i], true));
    }
    Stack.Row row = row(cells, widths, true, true);
    return List.of(rule(widths, RULE), row, rule(widths, RULE));
  }

  private List<Stack.Row> body(double[] widths, double width) {
    List<Stack.Row> rows = new ArrayList<>();
    for (int r = 0; r < texts.size(); r++) {
      if (r > 0) {
        boolean firstTotal = isTotal(r) && !isTotal(r - 1);
        rows.add(rule(widths, firstTotal ? RULE : HAIRLINE));
      }
      if (isHeading(r) && r + 1 < texts.size()) {
        List<Stack.Row> next = bodyRow(r + 1, widths);
        rows.add(together(heading(r, width), rule(widths, HAIRLINE), next.get(0)));
        rows.addAll(next.subList(1, next.size()));
        r++;
      } else {
        rows.addAll(bodyRow(r, widths));
      }
    }
    rows.add(rule(widths, RULE));
    return rows;
  }

  private List<Stack.Row> notes(double width) {
    List<Stack.Row> rows = new ArrayList<>();
    for (String note : table.notes()) {
      rows.add(Blocks.gap(0.8));
      for (String line : type.wrap(note, type.body(), false, width)) {
        rows.add(
            new Stack.Row(
                Type.pitch(type.body()),
                (x, y) ->
                    List.of(
                        Type.line(
                            line, x, y, type.body(), false, Ink.Align.START, Palette.MUTED))));
      }
    }
    return rows;
  }

  private Stack.Row heading(int r, double width) {
    List<String> lines =
        type.wrap(texts.get(r).get(0), type.body(), true, width - 2 * sidePaddingMm());
    return new Stack.Row(
        lines.size() * Type.pitch(type.body()) + 2 * rowPaddingMm(),
        (x, y) ->
            Type.lines(
                lines, x + sidePaddingMm(), y + rowPaddingMm(), type.body(), true, Palette.INK));
  }

  /** Rows that no break may part. */
  private static Stack.Row together(Stack.Row... rows) {
    return new Stack.Row(
        Arrays.stream(rows).mapToDouble(Stack.Row::heightMm).sum(),
        (x, y) -> {
          List<Ink> inks = new ArrayList<>();
          double top = y;
          for (Stack.Row row : rows) {
            inks.addAll(row.drawn().at(x, top));
            top += row.heightMm();
          }
          return inks;
        });
  }

  /** One row of the table; more than one row of the pile if its text is very long. */
  private List<Stack.Row> bodyRow(int r, double[] widths) {
    List<List<String>> cells = new ArrayList<>();
    int most = 1;
    for (int i = 0; i < widths.length; i++) {
      List<String> lines = wrapped(texts.get(r).get(i), i, widths[i], isTotal(r));
      cells.add(lines);
      most = Math.max(most, lines.size());
    }
    List<Stack.Row> rows = new ArrayList<>();
    for (int from = 0; from < most; from += MOST_LINES_OF_A_ROW) {
      int start = from;
      List<List<String>> part =
          cells.stream()
              .map(
                  c ->
                      c.subList(
                          Math.min(start, c.size()),
                          Math.min(start + MOST_LINES_OF_A_ROW, c.size())))
              .toList();
      rows.add(row(part, widths, isTotal(r), false));
    }
    return rows;
  }

  private List<String> wrapped(String text, int column, double width, boolean bold) {
    return text.isBlank()
        ? List.of()
        : type.wrap(text, type.body(), bold, width - leftPadding(column) - sidePaddingMm());
  }

  private Stack.Row row(
      List<List<String>> cells, double[] widths, boolean bold, boolean bottomAligned) {
    int most = Math.max(1, cells.stream().mapToInt(List::size).max().orElse(1));
    double height = most * Type.pitch(type.body()) + 2 * rowPaddingMm();
    return new Stack.Row(
        height,
        (x, y) -> {
          List<Ink> inks = new ArrayList<>();
          double left = x;
          for (int i = 0; i < widths.length; i++) {
            boolean number = isNumber(i);
            double at = number ? left + widths[i] - sidePaddingMm() : left + leftPadding(i);
            int skipped = bottomAligned ? most - cells.get(i).size() : 0;
            for (int k = 0; k < cells.get(i).size(); k++) {
              double top = y + rowPaddingMm() + (k + skipped) * Type.pitch(type.body());
              Ink.Align align = number ? Ink.Align.END : Ink.Align.START;
              inks.add(Type.line(cells.get(i).get(k), at, top, type.body(), bold, align));
            }
            left += widths[i];
          }
          return inks;
        });
  }

  private static Stack.Row rule(double[] widths, Style style) {
    double total = Arrays.stream(widths).sum();
    return new Stack.Row(
        0, (x, y) -> List.of(Ink.Path.line(style, new Xy(x, y), new Xy(x + total, y))));
  }
}
