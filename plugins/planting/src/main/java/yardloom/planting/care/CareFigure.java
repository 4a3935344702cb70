package yardloom.planting.care;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/** The year of care as a strip chart: a row for each act, a bar over its days. */
public final class CareFigure {
  private static final double NAMES_M = 52;
  private static final double MONTH_M = 11;
  private static final double ROW_M = 4.7;
  private static final double BAR_M = 2.8;
  private static final double LETTERS_MM = 2;
  private static final double WIDTH_MM = NAMES_M + 12 * MONTH_M;

  /** A year without a leap day, on which bars are laid. */
  private static final int YEAR = 2021;

  private static final Style GRID = Style.line("care-grid", Palette.RULE, 0.13);
  private static final Style EACH =
      Style.filled("care-each", Palette.MUTED).outlined(Palette.INK, 0.18);
  private static final Style FIRST =
      Style.filled("care-first", Palette.PAPER).hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.18);
  private static final Style LATER =
      Style.filled("care-later", Palette.PAPER).outlined(Palette.INK, 0.25);

  private CareFigure() {}

  /** The chart; without rows where there is no calendar. */
  public static Panel.Figure of(List<CareAct> acts) {
    Map<String, List<CareAct>> rows = rows(acts);
    List<Mark> marks = new ArrayList<>();
    double heightM = rows.size() * ROW_M;
    for (int month = 0; month <= 12; month++) {
      double x = NAMES_M + month * MONTH_M;
      marks.add(stroke(x, 0, x, -heightM));
      if (month < 12) {
        String name = Months.name(month);
        marks.add(text(x + MONTH_M / 2, ROW_M / 2, name, true));
      }
    }
    int row = 0;
    for (Map.Entry<String, List<CareAct>> e : rows.entrySet()) {
      double y = -(row++ + 0.5) * ROW_M;
      marks.add(stroke(0, y - ROW_M / 2, WIDTH_MM, y - ROW_M / 2));
      marks.add(text(NAMES_M / 2, y, e.getKey(), false));
      e.getValue().forEach(act -> bar(marks, act, y, style(e.getValue())));
    }
    return new Panel.Figure("The year of care", marks, legend(), WIDTH_MM, 0);
  }

  /** By name, in the order of the year in which each first ends. */
  private static Map<String, List<CareAct>> rows(List<CareAct> acts) {
    Map<String, List<CareAct>> rows = new LinkedHashMap<>();
    acts.stream()
        .sorted(
            Comparator.comparing((CareAct a) -> a.when().ends())
                .thenComparing(CareAct::key)
                .thenComparing((CareAct a) -> a.when().season()))
        .forEach(a -> rows.computeIfAbsent(name(a), k -> new ArrayList<>()).add(a));
    return rows;
  }

  /** Weeding goes on all season, weekly or not: one row. */
  private static String name(CareAct act) {
    return act.task().act() == Act.WEED ? "Weed and walk the mulch" : act.task().what();
  }

  private static Style style(List<CareAct> same) {
    boolean first = same.stream().anyMatch(a -> a.when().season() == 1);
    boolean later = same.stream().anyMatch(a -> a.when().season() > 1);
    return first && later ? EACH : first ? FIRST : LATER;
  }

  private static void bar(List<Mark> marks, CareAct act, double y, Style style) {
    if (act.when().isAllYear()) {
      marks.add(box(NAMES_M, WIDTH_MM, y, style, act));
      return;
    }
    double from = x(act.when().from(), 0);
    double until = x(act.when().until(), 1);
    if (until > from) {
      marks.add(box(from, until, y, style, act));
    } else {
      marks.add(box(from, WIDTH_MM, y, style, act));
      marks.add(box(NAMES_M, until, y, style, act));
    }
  }

  /** Where a day lies; leap days lie on the day before. */
  private static double x(LocalDate date, int after) {
    LocalDate day = MonthDay.from(date).atYear(YEAR);
    double share = (day.getDayOfMonth() - 1 + after) / (double) day.lengthOfMonth();
    return NAMES_M + (day.getMonthValue() - 1 + share) * MONTH_M;
  }

  private static Mark box(double from, double until, double y, Style style, CareAct act) {
    Shape shape =
        Shape.rectangle(
            Point.metres(from, y - BAR_M / 2),
            Length.metres(Math.max(0.8, until - from)),
            Length.metres(BAR_M));
    return new Mark.Region(shape, style, act.task().what());
  }

  private static Mark stroke(double x, double y, double toX, double toY) {
    return new Mark.Stroke(
        Line.between(Point.metres(x, y), Point.metres(toX, toY)), GRID, "grid of months");
  }

  private static Mark text(double x, double y, String text, boolean bold) {
    return new Mark.Label(Point.metres(x, y), text, LETTERS_MM, bold, 1, Mark.Anchor.FIXED);
  }

  private static List<LegendEntry> legend() {
    return List.of(
        LegendEntry.area("in season 1 and after", EACH),
        LegendEntry.area("in season 1 only", FIRST),
        LegendEntry.area("from season 2 or later on", LATER));
  }
}
