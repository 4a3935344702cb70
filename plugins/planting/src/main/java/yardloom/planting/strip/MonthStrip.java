package yardloom.planting.strip;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/**
 * A chart of the months: names of rows to the left, bars over days to the right. One metre of it
 * stands for a millimetre on paper.
 */
public final class MonthStrip {
  private static final int MONTHS = 12;
  private static final double LETTERS_MM = 2;

  /** Months narrower than that have their first letter only. */
  private static final double NAMED_M = 8;

  private static final double LEAST_BAR_M = 0.8;
  private static final int YEAR_DAYS = 365;

  /** A year without a leap day, on which bars are laid. */
  private static final int YEAR = 2021;

  private static final Style GRID = Style.line("care-grid", Palette.RULE, 0.13);

  private final double namesM;
  private final double monthM;
  private final List<Mark> marks = new ArrayList<>();
  private final double rowM;
  private double middleM;

  /**
   * With its months and the lines between them.
   *
   * @param namesM how wide names are
   * @param monthM how wide each month is
   * @param rowM how high each row is; names have to find room in rows a little lower than that
   * @param rows how many rows it will have
   */
  public MonthStrip(double namesM, double monthM, double rowM, int rows) {
    this.namesM = namesM;
    this.monthM = monthM;
    this.rowM = rowM;
    middleM = rowM / 2;
    for (int month = 0; month <= MONTHS; month++) {
      double x = namesM + month * monthM;
      stroke(x, 0, x, -rows * rowM);
      if (month < MONTHS) {
        text(
            x + monthM / 2,
            rowM / 2,
            monthM < NAMED_M ? Months.name(month).substring(0, 1) : Months.name(month),
            true);
      }
    }
  }

  /** How wide it is on paper. */
  public double widthMm() {
    return namesM + MONTHS * monthM;
  }

  /** The next row. */
  public void row(String name) {
    middleM -= rowM;
    stroke(0, middleM - rowM / 2, widthMm(), middleM - rowM / 2);
    text(namesM / 2, middleM, name, false);
  }

  /** Days as a bar of the last row; over New Year in two pieces, whole years from end to end. */
  public void bar(Bar bar, LocalDate from, LocalDate until) {
    double begin = x(from, 0);
    double end = x(until, 1);
    if (until.toEpochDay() - from.toEpochDay() >= YEAR_DAYS - 1) {
      box(bar, namesM, widthMm());
    } else if (end > begin) {
      box(bar, begin, end);
    } else {
      box(bar, begin, widthMm());
      box(bar, namesM, end);
    }
  }

  /**
   * How a bar looks.
   *
   * @param about what it is of
   * @param aboveM its middle over the middle of its row
   */
  public record Bar(String about, Style style, double aboveM, double heightM) {}

  /** All that was drawn. */
  public List<Mark> marks() {
    return List.copyOf(marks);
  }

  /** Where a day lies; leap days lie on the day before. */
  private double x(LocalDate date, int after) {
    LocalDate day = MonthDay.from(date).atYear(YEAR);
    double share = (day.getDayOfMonth() - 1 + after) / (double) day.lengthOfMonth();
    return namesM + (day.getMonthValue() - 1 + share) * monthM;
  }

  private void box(Bar bar, double from, double until) {
    double y = middleM + bar.aboveM();
    Shape shape =
        Shape.rectangle(
            Point.metres(from, y - bar.heightM() / 2),
            Length.metres(Math.max(LEAST_BAR_M, until - from)),
            Length.metres(bar.heightM()));
    marks.add(new Mark.Region(shape, bar.style(), bar.about()));
  }

  private void stroke(double x, double y, double toX, double toY) {
    marks.add(
        new Mark.Stroke(
            Line.between(Point.metres(x, y), Point.metres(toX, toY)), GRID, "grid of months"));
  }

  private void text(double x, double y, String text, boolean bold) {
    marks.add(new Mark.Label(Point.metres(x, y), text, LETTERS_MM, bold, 1, Mark.Anchor.FIXED));
  }
}
