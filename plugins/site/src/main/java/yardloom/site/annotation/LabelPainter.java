package yardloom.site.annotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.site.built.StructurePainter;
import yardloom.site.element.Covering;
import yardloom.site.element.Show;
import yardloom.site.remark.HiddenLabels;

/**
 * Names of elements that every drawing of the yard shows; beds with their area. What only some
 * sheets show is named by its own painter.
 */
public final class LabelPainter implements Painter {
  private static final double NORMAL_MM = 2.0;
  private static final double LARGE_MM = 2.5;
  private static final Length BESIDE_FENCE = Length.metres(1.2);

  @Override
  public Layer layer() {
    return new Layer("site.labels", "Labels", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    TableFormat format = TableFormat.of(plan.info());
    List<Mark> marks = new ArrayList<>();
    for (Element element : plan.elements()) {
      if (HiddenLabels.shows(plan, element)) {
        label(element, format, marks);
        if (element instanceof Element.Fence fence) {
          inside(beside(fence, plan), Anchor.INSIDE, Show.name(fence), 3, marks);
        }
      }
    }
    for (Element.MulchedGround ground : plan.all(Element.MulchedGround.class)) {
      if (HiddenLabels.shows(plan, ground)) {
        inside(bare(plan, ground), Show.name(ground), 3, marks);
      }
    }
    return marks;
  }

  private static void label(Element element, TableFormat format, List<Mark> marks) {
    if (element instanceof Element.Building b) {
      marks.add(
          b.neighbour()
              ? text(b.shape().heart(), Show.name(b), 4, Anchor.CENTRE).on(b.shape())
              : new Mark.Label(b.shape().heart(), Show.name(b), LARGE_MM, true, 1, Anchor.CENTRE)
                  .on(b.shape()));
    } else if (element instanceof Element.Bed bed) {
      String area = format.withUnit(Measure.AREA, bed.shape().area());
      inside(bed.shape(), Show.name(bed) + second(area), 1, marks);
    } else if (element instanceof Element.Structure s && !StructurePainter.isSwale(s)) {
      inside(s.shape(), Show.name(s), 1, marks);
    } else if (element instanceof Element.Paving p) {
      inside(p.shape(), Show.name(p) + second(p.surface()), 2, marks);
    } else if (element instanceof Element.KeepOut k) {
      boolean isSaid = k.reason().equalsIgnoreCase(k.id().name());
      inside(k.shape(), Show.name(k) + second(isSaid ? "" : k.reason()), 1, marks);
    } else if (element instanceof Element.Path p) {
      marks.add(text(p.line().middle(), Show.name(p), 3, Anchor.CENTRE).on(p.shape()));
    } else if (element instanceof Element.Tree tree) {
      marks.add(text(tree.at(), Show.name(tree), 2, Anchor.NEAR));
    }
  }

  /** Where its name stands on nothing else. */
  private static Shape bare(Plan plan, Element.MulchedGround ground) {
    return ground
        .shape()
        .minus(
            Shape.union(
                Covering.elements(plan).stream()
                    .filter(e -> !(e instanceof Element.MulchedGround))
                    .map(Element::shape)
                    .toList()));
  }

  /** Along a fence, on neither it nor the lot line: on the side that has more of the lot. */
  private static Shape beside(Element.Fence fence, Plan plan) {
    return Stream.of(fence.line(), fence.line().reversed())
        .map(line -> line.strip(Length.ZERO, BESIDE_FENCE))
        .map(strip -> plan.lot().map(lot -> strip.and(lot.shape())).orElse(strip))
        .map(strip -> strip.minus(fence.shape()))
        .max(Comparator.comparingDouble(strip -> strip.area().squareMetres()))
        .orElse(Shape.EMPTY);
  }

  private static void inside(Shape shape, String text, int rank, List<Mark> marks) {
    inside(shape, Anchor.CENTRE, text, rank, marks);
  }

  private static void inside(Shape shape, Anchor anchor, String text, int rank, List<Mark> marks) {
    if (!shape.isEmpty()) {
      marks.add(text(shape.heart(), text, rank, anchor).on(shape));
    }
  }

  private static Mark.Label text(Point at, String text, int rank, Anchor anchor) {
    return new Mark.Label(at, text, NORMAL_MM, false, rank, anchor);
  }

  /** A second line, if there is anything to say. */
  private static String second(String text) {
    return text.isBlank() ? "" : "\n" + text;
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
