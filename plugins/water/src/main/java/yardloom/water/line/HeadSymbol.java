package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.water.head.HeadPart;

/**
 * The signs of parts at the tap, of our own: a valve is two wedges that meet, with a lever, or with
 * a box where current opens it; what lets water one way only a wedge against a bar; a filter a box
 * with a mesh; a regulator two wedges under a dome; a timer a clock.
 */
final class HeadSymbol {
  private static final double HALF = 0.45;
  private static final Style BODY =
      Style.filled("head-part", Palette.PAPER).outlined(Palette.INK, 0.35);
  private static final Style SOLID = Style.filled("head-solid", Palette.INK);
  private static final Style MESH =
      Style.filled("head-mesh", Palette.PAPER)
          .hatched(Style.Hatch.DIAGONAL)
          .outlined(Palette.INK, 0.35);
  private static final Style STEM = Style.line("head-stem", Palette.INK, 0.35);

  private final List<Mark> marks;
  private final boolean isTank;

  HeadSymbol(List<Mark> marks, boolean isTank) {
    this.marks = marks;
    this.isTank = isTank;
  }

  void draw(HeadPart part, double x, double y) {
    String name = part.name();
    switch (part.kind()) {
      case SHUT_OFF -> {
        wedges(x, y, name);
        lever(x, y, name);
      }
      case ZONE_VALVE -> {
        wedges(x, y, name);
        if (isTank) {
          lever(x, y, name);
        } else {
          stroke(x, y, x, y + HALF, name);
          box(x, y + 0.6, 0.2, SOLID, name);
        }
      }
      case REGULATOR -> {
        wedges(x, y, name);
        stroke(x, y, x, y + 0.3, name);
        dome(x, y + 0.3, name);
      }
      case TIMER -> {
        marks.add(
            new Mark.Region(Shape.circle(Point.metres(x, y), Length.metres(HALF)), BODY, name));
        stroke(x, y, x, y + 0.32, name);
        stroke(x, y, x + 0.24, y, name);
      }
      case BACKFLOW -> {
        box(x, y, HALF, BODY, name);
        polygon(SOLID, name, x - 0.25, y - 0.25, x + 0.2, y, x - 0.25, y + 0.25);
        stroke(x + 0.25, y - 0.28, x + 0.25, y + 0.28, name);
      }
      case FILTER -> box(x, y, HALF, MESH, name);
      case OTHER -> box(x, y, HALF, BODY, name);
    }
  }

  private void wedges(double x, double y, String name) {
    polygon(BODY, name, x - HALF, y - 0.28, x, y, x - HALF, y + 0.28);
    polygon(BODY, name, x + HALF, y - 0.28, x, y, x + HALF, y + 0.28);
  }

  private void lever(double x, double y, String name) {
    stroke(x, y, x, y + HALF, name);
    stroke(x - 0.3, y + HALF, x + 0.3, y + HALF, name);
  }

  private void dome(double x, double y, String name) {
    double[] corners = new double[2 * 9];
    for (int i = 0; i < 9; i++) {
      double turn = StrictMath.PI * i / 8;
      corners[2 * i] = x + 0.3 * StrictMath.cos(turn);
      corners[2 * i + 1] = y + 0.3 * StrictMath.sin(turn);
    }
    polygon(BODY, name, corners);
  }

  private void box(double x, double y, double half, Style style, String name) {
    marks.add(
        new Mark.Region(
            Shape.rectangle(
                Point.metres(x - half, y - half), Length.metres(2 * half), Length.metres(2 * half)),
            style,
            name));
  }

  private void polygon(Style style, String name, double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(Point.metres(xy[i], xy[i + 1]));
    }
    marks.add(new Mark.Region(Shape.polygon(corners), style, name));
  }

  private void stroke(double fromX, double fromY, double toX, double toY, String name) {
    marks.add(
        new Mark.Stroke(
            Line.between(Point.metres(fromX, fromY), Point.metres(toX, toY)), STEM, name));
  }
}
