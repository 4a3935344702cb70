package yardloom.kernel.paint;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;

/** Names of elements; beds with their area. */
final class LabelPainter implements Painter {
  private static final double NORMAL_MM = 2.0;
  private static final double LARGE_MM = 2.5;

  @Override
  public Layer layer() {
    return new Layer("kernel.labels", "Labels", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    TableFormat format = new TableFormat(plan.info().units(), plan.info().currency());
    List<Mark> marks = new ArrayList<>();
    for (Element element : plan.elements()) {
      label(element, format, marks);
    }
    return marks;
  }

  private static void label(Element element, TableFormat format, List<Mark> marks) {
    if (element instanceof Element.Building b) {
      add(
          marks,
          b.shape().heart(),
          name(b),
          b.neighbour() ? NORMAL_MM : LARGE_MM,
          !b.neighbour(),
          b.neighbour() ? 4 : 1,
          Anchor.CENTRE);
    } else if (element instanceof Element.Bed bed && !bed.shape().isEmpty()) {
      String text = name(bed) + "\n" + format.withUnit(Measure.AREA, bed.shape().area());
      add(marks, bed.shape().heart(), text, NORMAL_MM, false, 1, Anchor.CENTRE);
    } else if (element instanceof Element.Structure s
        && !s.shape().isEmpty()
        && !StructurePainter.isSwale(s)) {
      add(marks, s.shape().heart(), name(s), NORMAL_MM, false, 1, Anchor.CENTRE);
    } else if (element instanceof Element.Paving p && !p.shape().isEmpty()) {
      String text = name(p) + (p.surface().isBlank() ? "" : "\n" + p.surface());
      add(marks, p.shape().heart(), text, NORMAL_MM, false, 2, Anchor.CENTRE);
    } else if (element instanceof Element.Path p) {
      add(marks, middle(p.line()), name(p), NORMAL_MM, false, 3, Anchor.NEAR);
    } else if (element instanceof Element.Tree tree) {
      add(marks, tree.at(), name(tree), NORMAL_MM, false, 2, Anchor.NEAR);
    } else if (element instanceof Element.WaterPoint water) {
      add(marks, water.at(), name(water), NORMAL_MM, false, 2, Anchor.NEAR);
    } else if (element instanceof Element.Fence fence) {
      add(marks, middle(fence.line()), name(fence), NORMAL_MM, false, 3, Anchor.NEAR);
    } else if (element instanceof Element.Utility u) {
      String text = u.carries().isBlank() ? name(u) : u.carries();
      add(marks, middle(u.line()), text, NORMAL_MM, true, 1, Anchor.NEAR);
    } else if (element instanceof Element.KeepOut k && !k.shape().isEmpty()) {
      String text = name(k) + (k.reason().isBlank() ? "" : "\n" + k.reason());
      add(marks, k.shape().heart(), text, NORMAL_MM, false, 1, Anchor.CENTRE);
    }
  }

  private static void add(
      List<Mark> marks, Point at, String text, double mm, boolean bold, int rank, Anchor anchor) {
    marks.add(new Mark.Label(at, text, mm, bold, rank, anchor));
  }

  /** The element's name; a bare number or letter gets its kind before it. */
  private static String name(Element element) {
    String name = element.id().name();
    return name.length() <= 2 ? capital(element.id().kind().word()) + " " + name : capital(name);
  }

  private static String capital(String text) {
    int first = text.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toTitleCase(first))
        .append(text.substring(Character.charCount(first)))
        .toString();
  }

  /** The point half way along the line. */
  private static Point middle(Line line) {
    double left = line.length().metres() / 2;
    List<Point> points = line.points();
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      double step = a.distance(b).metres();
      if (left <= step) {
        double share = left / step;
        return a.moved(b.x().minus(a.x()).times(share), b.y().minus(a.y()).times(share));
      }
      left -= step;
    }
    return line.end();
  }
}
