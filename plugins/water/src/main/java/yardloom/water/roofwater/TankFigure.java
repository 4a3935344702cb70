package yardloom.water.roofwater;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.water.tank.TankCurve;

/** The share of the need that tanks meet, by size, in a dry, a usual and a wet year. */
final class TankFigure {
  private static final double STEP_M = 1;
  private static final double HEIGHT_M = 5;

  /** Between sizes that are both said. */
  private static final double ROOM_M = 0.8;

  private static final Column SIZE = Column.of("size", "Need met by tank size", Measure.WATER);
  private static final double MIN_WIDTH_MM = 120;
  private static final Style AXIS = Style.line("curve-axis", Palette.INK, 0.25);
  private static final Style GRID = Style.line("curve-grid", Palette.RULE, 0.18);
  private static final Style PAPER = Style.filled("curve-paper", Palette.PAPER);
  private static final Style DRY = Style.line("curve-dry", Palette.INK, 0.7);
  private static final Style USUAL = Style.line("curve-usual", Palette.INK, 0.5).dashed("2 1");
  private static final Style WET = Style.line("curve-wet", Palette.INK, 0.35).dashed("0.6 0.8");
  private static final Style KNEE =
      Style.filled("curve-knee", Palette.PAPER).outlined(Palette.INK, 0.5);
  private static final Style OWN = Style.filled("curve-own", Palette.INK);

  private TankFigure() {}

  static Panel.Figure of(TankCurve curve, UnitSystem units) {
    List<Mark> marks = new ArrayList<>();
    int last = curve.points().size() - 1;
    // Texts stand within the bounds of what is drawn.
    marks.add(
        new Mark.Region(
            Shape.rectangle(
                Point.metres(-1, -0.6),
                Length.metres(last * STEP_M + 1.6),
                Length.metres(HEIGHT_M + 0.9)),
            PAPER,
            "ground of the figure"));
    for (int percent = 0; percent <= 100; percent += 25) {
      double y = HEIGHT_M * percent / 100;
      stroke(marks, 0, y, last * STEP_M, y, percent == 0 ? AXIS : GRID);
      text(marks, -0.5, y, percent + " %");
    }
    stroke(marks, 0, 0, 0, HEIGHT_M, AXIS);
    for (int i = 0; i <= last; i++) {
      Volume size = curve.points().get(i).size();
      boolean isCrowded =
          curve.own().filter(curve.points().get(i)::equals).isPresent()
              && (i > 0 && x(curve, i) - x(curve, i - 1) < ROOM_M
                  || i < last && x(curve, i + 1) - x(curve, i) < ROOM_M);
      if (!isCrowded) {
        text(marks, x(curve, i), -0.3, size(size, units));
      }
    }
    boolean isRange = curve.years() > 1;
    line(marks, curve, TankCurve.Point::usual, USUAL, "usual year");
    if (isRange) {
      line(marks, curve, TankCurve.Point::wet, WET, "wet year");
      line(marks, curve, TankCurve.Point::dry, DRY, "dry year");
    }
    symbol(marks, curve, curve.knee(), KNEE, "knee");
    curve.own().ifPresent(own -> symbol(marks, curve, own, OWN, "tank of the plan"));
    List<LegendEntry> legend = new ArrayList<>();
    legend.add(LegendEntry.line(isRange ? "usual year" : "the year of the record", USUAL));
    if (isRange) {
      legend.add(LegendEntry.line("dry year", DRY));
      legend.add(LegendEntry.line("wet year", WET));
    }
    legend.add(LegendEntry.symbol("more brings little", Mark.SymbolForm.DOT, KNEE));
    curve
        .own()
        .ifPresent(
            o -> legend.add(LegendEntry.symbol("tank of the plan", Mark.SymbolForm.DOT, OWN)));
    String name = curve.name().isEmpty() ? "" : ", " + curve.name();
    return new Panel.Figure(
        new TableFormat(units, "").header(SIZE) + name, marks, legend, MIN_WIDTH_MM, 0);
  }

  /** By the logarithm of the size, so that a tank of the plan stands where its size belongs. */
  private static double x(TankCurve curve, int i) {
    int last = curve.points().size() - 1;
    Volume least = curve.points().get(0).size();
    double whole = StrictMath.log(curve.points().get(last).size().ratioTo(least));
    return last * STEP_M * StrictMath.log(curve.points().get(i).size().ratioTo(least)) / whole;
  }

  private static String size(Volume size, UnitSystem units) {
    return new TableFormat(units, "").text(SIZE, Cell.of(size));
  }

  private static void line(
      List<Mark> marks,
      TankCurve curve,
      ToDoubleFunction<TankCurve.Point> share,
      Style style,
      String about) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < curve.points().size(); i++) {
      points.add(Point.metres(x(curve, i), HEIGHT_M * share.applyAsDouble(curve.points().get(i))));
    }
    marks.add(new Mark.Stroke(Line.through(points), style, about));
  }

  private static void symbol(
      List<Mark> marks, TankCurve curve, TankCurve.Point point, Style style, String about) {
    double x = x(curve, curve.points().indexOf(point));
    marks.add(
        new Mark.Symbol(
            Point.metres(x, HEIGHT_M * point.dry()),
            Mark.SymbolForm.DOT,
            Length.ZERO,
            Angle.ZERO,
            style,
            about));
  }

  private static void stroke(
      List<Mark> marks, double fromX, double fromY, double toX, double toY, Style style) {
    marks.add(
        new Mark.Stroke(
            Line.between(Point.metres(fromX, fromY), Point.metres(toX, toY)), style, "axis"));
  }

  private static void text(List<Mark> marks, double x, double y, String text) {
    marks.add(new Mark.Label(Point.metres(x, y), text, 2, false, 2, Mark.Anchor.FIXED));
  }
}
