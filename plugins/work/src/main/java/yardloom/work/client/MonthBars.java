package yardloom.work.client;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/**
 * A table of twelve months as a bar chart, so that it shows no other figure than its table. Of low,
 * likely and high the bar is the likely amount and a line runs from low to high; of other columns
 * of numbers the first and the last of one unit stand side by side. It is read in black and white.
 *
 * <p>References: [1] W. S. Cleveland, R. McGill, Graphical Perception, Journal of the American
 * Statistical Association 79, 1984, pp. 531-554 (from memory): lengths from a common baseline are
 * compared best, so the axis begins at zero.
 */
final class MonthBars {
  private static final double AXIS_M = 12;
  private static final double MONTH_M = 6;
  private static final double HIGH_M = 13;
  private static final double WIDTH_M = AXIS_M + 12 * MONTH_M;
  private static final double LETTERS_MM = 2;

  private static final Style GRID = Style.line("bars-grid", Palette.RULE, 0.13);
  private static final Style AXIS = Style.line("bars-axis", Palette.INK, 0.35);
  private static final Style FIRST =
      Style.filled("bars-first", "#ffffff").hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.18);
  private static final Style BAR = Style.filled("bars-main", "#6f9a52").outlined(Palette.INK, 0.18);
  private static final Style RANGE = Style.line("bars-range", Palette.INK, 0.35);

  private final Table table;
  private final TableFormat format;
  private final List<Mark> marks = new ArrayList<>();

  private MonthBars(Table table, TableFormat format) {
    this.table = table;
    this.format = format;
  }

  /** The chart; empty for a table that is not one of months, or without any amount. */
  static Optional<Panel.Figure> of(Table table, TableFormat format) {
    return table.rows().size() - table.totals() == 12 && table.columns().get(0).id().equals("month")
        ? new MonthBars(table, format).chart()
        : Optional.empty();
  }

  private Optional<Panel.Figure> chart() {
    Optional<Column> likely = column("likely");
    boolean ranges = likely.isPresent() && column("low").isPresent() && column("high").isPresent();
    List<Column> shown = ranges ? List.of(likely.get()) : firstAndLast();
    List<Column> all = ranges ? List.of(column("high").get()) : shown;
    double most =
        all.stream().flatMapToDouble(c -> amounts(c).stream().mapToDouble(a -> a)).max().orElse(0);
    if (most <= 0) {
      return Optional.empty();
    }
    double step = step(most);
    double top = step * Math.ceil(most / step - 1e-9);
    axes(step, top);
    for (int month = 0; month < 12; month++) {
      for (int i = 0; i < shown.size(); i++) {
        double wide = 0.7 * MONTH_M / shown.size();
        double x = AXIS_M + (month + 0.15) * MONTH_M + i * wide;
        bar(x, wide, amounts(shown.get(i)).get(month) / top, isHatched(i, shown));
      }
      if (ranges) {
        range(month, column("low").get(), column("high").get(), top);
      }
    }
    String unit = format.unit(shown.get(0));
    return Optional.of(
        new Panel.Figure(
            table.title() + (unit.isEmpty() ? "" : ", " + unit),
            marks,
            legend(shown, ranges),
            WIDTH_M,
            0));
  }

  private static boolean isHatched(int i, List<Column> shown) {
    return i == 0 && shown.size() > 1;
  }

  private Optional<Column> column(String id) {
    return table.columns().stream().filter(c -> c.id().equals(id)).findFirst();
  }

  private List<Column> firstAndLast() {
    List<Column> numbers = table.columns().stream().filter(c -> c.measure().isNumber()).toList();
    if (numbers.isEmpty()) {
      return List.of();
    }
    Column first = numbers.get(0);
    Column last = numbers.get(numbers.size() - 1);
    return first == last || first.measure() != last.measure()
        ? List.of(first)
        : List.of(first, last);
  }

  /** The amounts of the months as they are printed; none counts as 0. */
  private List<Double> amounts(Column column) {
    int at = table.columns().indexOf(column);
    return table.rows().stream().limit(12).map(row -> amount(column, row.get(at))).toList();
  }

  private double amount(Column column, Cell cell) {
    String printed = format.plain(column, cell);
    return printed.isEmpty() ? 0 : Double.parseDouble(printed);
  }

  /** 1, 2 or 5 times a power of ten, so that three to six lines divide the height. */
  static double step(double most) {
    double power = 1;
    while (power * 10 <= most) {
      power *= 10;
    }
    while (power > most) {
      power /= 10;
    }
    for (double step : new double[] {power / 5, power / 2, power, 2 * power}) {
      if (most / step <= 5) {
        return step;
      }
    }
    return 2 * power;
  }

  private void axes(double step, double top) {
    for (int i = 0; i * step <= top * (1 + 1e-9); i++) {
      double y = HIGH_M * i * step / top;
      line(AXIS_M, y, WIDTH_M, y, i == 0 ? AXIS : GRID);
      String figure =
          step >= 1 || i == 0
              ? String.valueOf(Math.round(i * step))
              : String.format(Locale.ROOT, step < 0.1 ? "%.2f" : "%.1f", i * step);
      text(AXIS_M / 2, y, figure);
    }
    for (Month month : Month.values()) {
      text(AXIS_M + (month.getValue() - 0.5) * MONTH_M, -2.6, Months.name(month));
    }
  }

  private void bar(double x, double wide, double share, boolean hatched) {
    if (share > 0) {
      Shape shape =
          Shape.rectangle(Point.metres(x, 0), Length.metres(wide), Length.metres(HIGH_M * share));
      marks.add(new Mark.Region(shape, hatched ? FIRST : BAR, table.title()));
    }
  }

  private void range(int month, Column low, Column high, double top) {
    double from = HIGH_M * amounts(low).get(month) / top;
    double to = HIGH_M * amounts(high).get(month) / top;
    if (to > from) {
      double x = AXIS_M + (month + 0.5) * MONTH_M;
      line(x, from, x, to, RANGE);
      line(x - 0.8, from, x + 0.8, from, RANGE);
      line(x - 0.8, to, x + 0.8, to, RANGE);
    }
  }

  private void line(double x, double y, double toX, double toY, Style style) {
    marks.add(
        new Mark.Stroke(
            Line.between(Point.metres(x, y), Point.metres(toX, toY)), style, table.title()));
  }

  private void text(double x, double y, String text) {
    marks.add(new Mark.Label(Point.metres(x, y), text, LETTERS_MM, false, 1, Mark.Anchor.FIXED));
  }

  private static List<LegendEntry> legend(List<Column> shown, boolean ranges) {
    if (ranges) {
      return List.of(LegendEntry.area("Likely", BAR), LegendEntry.line("From low to high", RANGE));
    }
    return shown.size() == 1
        ? List.of(LegendEntry.area(TableFormat.title(shown.get(0)), BAR))
        : List.of(
            LegendEntry.area(TableFormat.title(shown.get(0)), FIRST),
            LegendEntry.area(TableFormat.title(shown.get(1)), BAR));
  }
}
