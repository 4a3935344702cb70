package yardloom.sun.sheet;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** What a sun figure shows of the yard itself: lot, buildings, beds, crowns. */
final class YardOutline {
  private static final Style LOT_EDGE = Style.line("sun-lot-edge", Palette.INK, 0.35);
  private static final Style BED_EDGE = Style.line("sun-bed-edge", Palette.INK, 0.25);
  private static final Style CROWN_EDGE =
      Style.line("sun-crown-edge", Palette.INK, 0.18).dashed("1.5 1");
  private static final double GAP = 0.12;
  private static final double CAPTION_MM = 2.6;

  private final Plan plan;
  private final Shape ground;

  YardOutline(Plan plan) {
    this.plan = plan;
    ground =
        plan.lot()
            .map(lot -> lot.shape())
            .orElseGet(
                () ->
                    Shape.union(plan.all(Element.Bed.class).stream().map(b -> b.shape()).toList()));
  }

  /** The lot, or all beds of a plan without one. */
  Shape ground() {
    return ground;
  }

  /** The lot without what is built on it. */
  Shape room() {
    List<Shape> built = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> built.add(b.shape()));
    plan.all(Element.Structure.class).forEach(b -> built.add(b.shape()));
    return ground.minus(Shape.union(built));
  }

  /** A number of tiles in a row that makes a figure of {@code tiles} wider than high. */
  int columns(int tiles) {
    return bounds().getHeight() > bounds().getWidth() ? tiles / 2 : tiles / 3;
  }

  /** How far the {@code index}-th tile of a figure with some columns lies to the right. */
  double rightM(int index, int columns) {
    return index % columns * bounds().getWidth() * (1 + GAP);
  }

  /** How far up the {@code index}-th tile lies; tiles run from the top left. */
  double upM(int index, int columns) {
    return -(index / columns) * bounds().getHeight() * (1 + 1.6 * GAP);
  }

  private Envelope bounds() {
    return ground.bounds();
  }

  /** Outlines and a caption over a tile. */
  List<Mark> marks(String caption, double rightM, double upM) {
    List<Mark> marks = new ArrayList<>();
    for (Element.Building b : plan.all(Element.Building.class)) {
      add(marks, b.shape().and(ground), Palette.BUILDING, b.id().toString(), rightM, upM);
    }
    for (Element.Structure s : plan.all(Element.Structure.class)) {
      add(marks, s.shape().and(ground), Palette.STRUCTURE, s.id().toString(), rightM, upM);
    }
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      add(marks, bed.shape(), BED_EDGE, bed.id().toString(), rightM, upM);
    }
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      add(marks, tree.shape().and(ground), CROWN_EDGE, tree.id().toString(), rightM, upM);
    }
    add(marks, ground, LOT_EDGE, "lot", rightM, upM);
    Envelope box = bounds();
    Point top =
        Point.metres(box.centre().x + rightM, box.getMaxY() + upM + 0.5 * GAP * box.getHeight());
    marks.add(new Mark.Label(top, caption, CAPTION_MM, true, 1, Mark.Anchor.CENTRE));
    return marks;
  }

  private static void add(
      List<Mark> marks, Shape shape, Style style, String about, double rightM, double upM) {
    if (!shape.isEmpty()) {
      marks.add(new Mark.Region(HourBands.moved(shape, rightM, upM), style, about));
    }
  }
}
