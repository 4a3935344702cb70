package yardloom.program.report;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Months;
import yardloom.sheet.compose.PaperWords;

/**
 * Draws the charts that tables ask for. Every figure is the table's, as it is printed there; bars
 * differ by hatch and darkness, so that they can be told apart without colour.
 */
final class Charts {
  /** More rows would make a chart longer than a screen; the table has them all. */
  private static final int MOST_ROWS = 12;

  private static final double LEFT = 44;
  private static final double ROW = 34;

  private final Chart chart;
  private final ChartPen pen;

  private Charts(Chart chart, Table table, TableFormat format, PaperWords words) {
    this.chart = chart;
    this.pen = new ChartPen(chart, table, format, words);
  }

  /** The charts of all tables, in the order of the tables. */
  static List<ChartView> of(Outcome outcome, TableFormat format, PaperWords words) {
    List<ChartView> views = new ArrayList<>();
    for (Table table : outcome.tables()) {
      for (Chart chart : outcome.reading(table).charts()) {
        new Charts(chart, table, format, words).draw().ifPresent(views::add);
      }
    }
    return views;
  }

  private Optional<ChartView> draw() {
    if (pen.rows().isEmpty() && pen.totals().isEmpty()) {
      return Optional.empty();
    }
    return switch (chart.kind()) {
      case BARS -> bars();
      case RANGES -> ranges();
      case GRID -> grid();
      case SPANS -> spans();
    };
  }

  private Optional<ChartView> bars() {
    List<List<Cell>> rows = pen.rows();
    double most = most(rows);
    if (most <= 0) {
      return Optional.empty();
    }
    double step = ChartPen.step(most);
    double top = Math.ceil(most / step - 1e-9) * step;
    double base = 180;
    double tall = 160;
    for (int i = 0; i * step <= top * (1 + 1e-9); i++) {
      double y = base - tall * i * step / top;
      pen.line(LEFT, y, ChartPen.WIDTH, y, i == 0 ? "axis" : "rule");
      pen.text(LEFT - 4, y + 4, "end", "", pen.axis(i * step));
    }
    double group = (ChartPen.WIDTH - LEFT) / rows.size();
    double bar = group * 0.84 / pen.series();
    for (int r = 0; r < rows.size(); r++) {
      double x = LEFT + r * group + group * 0.08;
      for (int s = 0; s < pen.series(); s++) {
        double h = tall * pen.number(rows.get(r), s) / top;
        String tip = pen.name(rows.get(r)) + ", " + said(rows.get(r), s);
        pen.rect(x + s * bar, base - h, bar, h, "bar", fill(s), tip);
      }
      String name = ChartPen.cut(pen.name(rows.get(r)), Math.max(2, (int) (group / 6.5)));
      pen.text(x + group * 0.42, base + 14, "middle", "", name.replace("…", ""));
    }
    for (int s = 0; s < pen.series() && pen.series() > 1; s++) {
      pen.key(fill(s), "bar", pen.head(s));
    }
    return Optional.of(pen.view(base + 22, figures(rows), ""));
  }

  private String fill(int series) {
    return switch (series % 3) {
      case 0 -> "#1b4965";
      case 1 -> pen.hatch();
      default -> "#ffffff";
    };
  }

  private double most(List<List<Cell>> rows) {
    return rows.stream()
        .flatMapToDouble(r -> IntStream.range(0, pen.series()).mapToDouble(s -> pen.number(r, s)))
        .max()
        .orElse(0);
  }

  /** The rows that reach highest, where there are too many, in the table's order. */
  private List<List<Cell>> longest(List<List<Cell>> rows) {
    List<List<Cell>> first =
        rows.stream()
            .sorted(Comparator.comparingDouble((List<Cell> r) -> -pen.number(r, pen.series() - 1)))
            .limit(MOST_ROWS)
            .toList();
    return rows.stream().filter(first::contains).toList();
  }

  private Optional<ChartView> ranges() {
    List<List<Cell>> totals = pen.totals();
    List<List<Cell>> rows = new ArrayList<>(totals);
    List<List<Cell>> parts = pen.rows();
    // A total would press all its parts into a corner: it stands alone, the parts in the table.
    if (totals.isEmpty()) {
      rows.addAll(longest(parts));
    }
    double most = most(rows);
    if (most <= 0) {
      return Optional.empty();
    }
    double left = 6;
    double wide = ChartPen.WIDTH - 2 * left;
    double y = 4;
    for (List<Cell> row : rows) {
      double low = left + wide * pen.number(row, 0) / most;
      double likely = left + wide * pen.number(row, 1) / most;
      double high = left + wide * pen.number(row, 2) / most;
      String figures = pen.figure(row, 0).isEmpty() ? "none" : range(row);
      pen.text(left, y + 12, "start", "strong", ChartPen.cut(pen.name(row), 30));
      pen.text(ChartPen.WIDTH - left, y + 12, "end", "", figures);
      pen.line(left, y + 22, left + wide, y + 22, "rule");
      if (!pen.figure(row, 0).isEmpty()) {
        pen.rect(low, y + 18, Math.max(1, high - low), 8, "bar", pen.hatch(), said(row));
        pen.rect(likely - 2, y + 15, 4, 14, "bar", "#1b4965", "");
      }
      y += ROW;
    }
    pen.key(pen.hatch(), "bar", pen.head(0) + " to " + small(pen.head(2)));
    pen.key("#1b4965", "bar", pen.head(1));
    return Optional.of(pen.view(y, figures(rows), left(parts.size(), rows.size(), totals)));
  }

  private static String left(int all, int shown, List<List<Cell>> totals) {
    if (!totals.isEmpty()) {
      return "Each part of it stands in the table.";
    }
    return shown < all ? "The " + shown + " largest of " + all + "; the table has all." : "";
  }

  private static String small(String head) {
    return head.substring(0, 1).toLowerCase(Locale.ROOT) + head.substring(1);
  }

  private String range(List<Cell> row) {
    return pen.figure(row, 0) + " – " + pen.figure(row, 1) + " – " + pen.figure(row, 2);
  }

  private Optional<ChartView> grid() {
    List<List<Cell>> all = pen.rows();
    List<List<Cell>> rows = all.subList(0, Math.min(all.size(), 2 * MOST_ROWS));
    double most = most(rows);
    if (most <= 0) {
      return Optional.empty();
    }
    double left = 112;
    double wide = (ChartPen.WIDTH - left) / pen.series();
    double tall = 22;
    for (int s = 0; s < pen.series(); s++) {
      pen.text(left + (s + 0.5) * wide, 12, "middle", "", pen.head(s).substring(0, 1));
    }
    double y = 18;
    for (List<Cell> row : rows) {
      pen.text(0, y + 15, "start", "", ChartPen.cut(pen.name(row), 17));
      for (int s = 0; s < pen.series(); s++) {
        double value = pen.number(row, s);
        String tip = pen.name(row) + ", " + said(row, s);
        double x = left + s * wide;
        pen.rect(x, y, wide, tall, "cell", shade(value / most), tip);
        String style = value / most > 0.5 ? "light" : "";
        String whole = pen.figure(row, s).isEmpty() ? "" : String.valueOf(Math.round(value));
        pen.text(x + wide / 2, y + 15, "middle", style, whole);
      }
      y += tall;
    }
    String more = rows.size() < all.size() ? " The table has " + all.size() + " rows." : "";
    return Optional.of(
        pen.view(
            y + 2,
            figures(rows),
            "Darker is more; rounded to whole numbers here, exact in the table." + more));
  }

  /**
   * From white to dark blue; light up to the middle, so that dark and white figures can be read.
   */
  private static String shade(double share) {
    double s = share > 0.5 ? 0.7 + (share - 0.5) * 0.6 : share * 0.7;
    return String.format(
        Locale.ROOT,
        "#%02x%02x%02x",
        Math.round(255 - s * (255 - 16)),
        Math.round(255 - s * (255 - 52)),
        Math.round(255 - s * (255 - 84)));
  }

  private Optional<ChartView> spans() {
    List<List<Cell>> rows =
        pen.rows().stream().filter(r -> day(r, 0) > 0 && day(r, 1) > 0).toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    double wide = ChartPen.WIDTH / 365;
    double end = 20 + rows.size() * ROW;
    for (int m = 0; m < 12; m++) {
      double x = (day(MonthDay.of(m + 1, 1)) - 1) * wide;
      pen.line(x, 16, x, end, "rule");
      pen.text(x + 15 * wide, 12, "middle", "", Months.name(m).substring(0, 1));
    }
    double y = 18;
    for (List<Cell> row : rows) {
      int from = day(row, 0);
      int until = day(row, 1);
      String figures = pen.figure(row, 0) + " – " + pen.figure(row, 1);
      pen.text(0, y + 12, "start", "strong", ChartPen.cut(pen.name(row), 32));
      pen.text(ChartPen.WIDTH, y + 12, "end", "", figures);
      if (from <= until) {
        span(from, until, y, said(row));
      } else {
        span(from, 365, y, said(row));
        span(1, until, y, said(row));
      }
      y += ROW;
    }
    return Optional.of(pen.view(end + 2, figures(rows), ""));
  }

  private void span(int from, int until, double y, String tip) {
    double wide = ChartPen.WIDTH / 365;
    pen.rect((from - 1) * wide, y + 17, (until - from + 1) * wide, 10, "bar", "#1b4965", tip);
  }

  /** The day of a year without a leap day, from 1; 0 for a blank cell. */
  private int day(List<Cell> row, int series) {
    Object value = pen.cell(row, series).value().orElse("");
    if (value instanceof LocalDate date) {
      return day(MonthDay.from(date));
    }
    return value instanceof MonthDay day ? day(day) : 0;
  }

  private static int day(MonthDay day) {
    return day.atYear(2025).getDayOfYear();
  }

  private String said(List<Cell> row, int series) {
    String figure = pen.figure(row, series);
    return pen.head(series) + " " + (figure.isEmpty() ? "none" : figure);
  }

  private String said(List<Cell> row) {
    return pen.name(row)
        + ": "
        + IntStream.range(0, pen.series())
            .mapToObj(s -> said(row, s))
            .collect(Collectors.joining(", "));
  }

  /** All figures, row by row. */
  private String figures(List<List<Cell>> rows) {
    return rows.stream().map(this::said).collect(Collectors.joining("; ")) + ".";
  }
}
