package yardloom.program.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;
import yardloom.program.report.ChartView.Key;
import yardloom.program.report.ChartView.Rect;
import yardloom.program.report.ChartView.Segment;
import yardloom.program.report.ChartView.Words;
import yardloom.sheet.compose.PaperWords;

/** Collects the shapes of one chart, and reads the figures for it from its table. */
final class ChartPen {
  /** Of every chart; heights follow from the rows. */
  static final double WIDTH = 360;

  private final Chart chart;
  private final Table table;
  private final TableFormat format;
  private final PaperWords words;
  private final List<Rect> rects = new ArrayList<>();
  private final List<Segment> segments = new ArrayList<>();
  private final List<Words> texts = new ArrayList<>();
  private final List<Key> keys = new ArrayList<>();
  private final List<Integer> columns;

  ChartPen(Chart chart, Table table, TableFormat format, PaperWords words) {
    this.chart = chart;
    this.table = table;
    this.format = format;
    this.words = words;
    this.columns = chart.columns().stream().map(this::index).toList();
  }

  private int index(String id) {
    for (int i = 0; i < table.columns().size(); i++) {
      if (table.columns().get(i).id().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException(
        "chart " + chart.id() + " names no column of " + table.id() + ": " + id);
  }

  /** Rows to draw: those with a figure, then the totals where they are wanted. */
  List<List<Cell>> rows() {
    return rows(0, table.rows().size() - table.totals());
  }

  List<List<Cell>> totals() {
    int end = table.rows().size();
    return chart.totals() ? rows(end - table.totals(), end) : List.of();
  }

  private List<List<Cell>> rows(int from, int to) {
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = from; i < to; i++) {
      if (!table.isHeading(i)) {
        rows.add(table.rows().get(i));
      }
    }
    return rows;
  }

  int series() {
    return columns.size();
  }

  Column column(int series) {
    return table.columns().get(columns.get(series));
  }

  Cell cell(List<Cell> row, int series) {
    return row.get(columns.get(series));
  }

  String name(List<Cell> row) {
    return words.cell(format.text(table.columns().get(0), row.get(0)));
  }

  String head(int series) {
    return words.of(TableFormat.title(column(series)));
  }

  /** The figure as the table prints it; empty for a blank cell. */
  String figure(List<Cell> row, int series) {
    return format.text(column(series), cell(row, series));
  }

  /** The unit that all figures have. */
  String unit() {
    return format.unit(column(0));
  }

  /** The number that the table prints; 0 for a blank cell. */
  double number(List<Cell> row, int series) {
    boolean filled = cell(row, series).value().filter(ChartPen::isNumber).isPresent();
    return filled ? Double.parseDouble(format.plain(column(series), cell(row, series))) : 0;
  }

  private static boolean isNumber(Object value) {
    return value instanceof Number || value instanceof Quantity<?>;
  }

  /** A number of the axis with its unit. */
  String axis(double value) {
    String number =
        value == Math.rint(value)
            ? String.format(Locale.ROOT, "%,d", (long) value)
            : String.format(Locale.ROOT, "%.1f", value);
    return format.units() == yardloom.kernel.unit.UnitSystem.US
        ? number
        : number.replace(',', '\u00a0');
  }

  void rect(double x, double y, double w, double h, String style, String fill, String tip) {
    rects.add(new Rect(n(x), n(y), n(w), n(h), style, fill, tip));
  }

  void line(double x1, double y1, double x2, double y2, String style) {
    segments.add(new Segment(n(x1), n(y1), n(x2), n(y2), style));
  }

  void text(double x, double y, String anchor, String style, String text) {
    texts.add(new Words(n(x), n(y), anchor, style, text));
  }

  void key(String fill, String style, String text) {
    keys.add(new Key(fill, style, text));
  }

  /** The url of a hatch of this chart. */
  String hatch() {
    return "url(#" + "chart-" + chart.id() + "-hatch)";
  }

  /** {@code height} is that of the whole drawing. */
  ChartView view(double height, String said, String note) {
    String unit = unit().isEmpty() || chart.title().endsWith(unit()) ? "" : ", " + unit();
    return new ChartView(
        "chart-" + chart.id(),
        words.of(chart.title()) + unit,
        said,
        note,
        "table-" + table.id(),
        words.of(table.title()),
        WIDTH,
        Math.ceil(height),
        rects,
        segments,
        texts,
        keys);
  }

  /** The text cut to about {@code widest} letters, at a space if there is one. */
  static String cut(String text, int widest) {
    if (text.codePointCount(0, text.length()) <= widest) {
      return text;
    }
    String head = text.substring(0, text.offsetByCodePoints(0, widest - 1)).strip();
    return head + "…";
  }

  /** The least of 1, 2, 2.5 and 5 times a power of ten by which at most five steps reach. */
  static double step(double most) {
    double power = 1e-6;
    while (true) {
      for (double part : new double[] {1, 2, 2.5, 5}) {
        if (part * power * 5 >= most * (1 - 1e-9)) {
          return part * power;
        }
      }
      power *= 10;
    }
  }

  private static String n(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
