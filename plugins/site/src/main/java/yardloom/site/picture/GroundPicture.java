package yardloom.site.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import yardloom.facts.ground.OpenGround;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** Lawn, paving, and the shadows that buildings throw on them. */
final class GroundPicture {
  private static final Style LAWN =
      Style.filled("picture-lawn", "#c9dba8").outlined("#5f7a45", 0.5);
  private static final Style AROUND = Style.filled("picture-around", "#eef0e6");
  private static final Style CHIPS =
      Style.filled("picture-chips", "#dcc49a").outlined("#b79b66", 0.18);
  private static final Style PAVING =
      Style.filled("picture-paving", "#d9d6cf").outlined("#a8a398", 0.18);
  private static final Style SHADOW = Style.filled("picture-shadow", "#a3b785");
  private static final Style SHADOW_ON_BARE = Style.filled("picture-shadow", "#c4b08c");

  /** As with the sun halfway up in the south-west. */
  private static final double SHADOW_PER_HEIGHT = 0.5;

  /** More than any sheet shows: the tint runs on to the edge of the picture. */
  private static final double AROUND_M = 500;

  private static final Style BARE =
      Style.filled("picture-bare", "#e4d6bc").outlined("#8a7550", 0.5);

  private static final double LEAST_ACROSS_M = 0.01;

  private GroundPicture() {}

  private static Style shadow(Plan plan) {
    return OpenGround.of(plan) == OpenGround.BARE ? SHADOW_ON_BARE : SHADOW;
  }

  private static Style style(OpenGround open) {
    return open == OpenGround.BARE ? BARE : LAWN;
  }

  /** Of those elements that {@code shown} lets through. */
  static List<Mark> marks(Plan plan, Predicate<Element> shown) {
    List<Mark> marks = new ArrayList<>();
    Shape lot = plan.lot().map(Lot::shape).orElse(Shape.EMPTY);
    if (!lot.isEmpty()) {
      Point corner =
          Point.metres(lot.bounds().getMinX() - AROUND_M, lot.bounds().getMinY() - AROUND_M);
      Shape around =
          Shape.rectangle(
              corner,
              Length.metres(lot.bounds().getWidth() + 2 * AROUND_M),
              Length.metres(lot.bounds().getHeight() + 2 * AROUND_M));
      marks.add(new Mark.Region(around.minus(lot), AROUND, "ground around the lot"));
      OpenGround open = OpenGround.of(plan);
      marks.add(new Mark.Region(lot, style(open), open.noun()));
    }
    PicturePainter.shown(plan, Element.MulchedGround.class, shown)
        .forEach(m -> marks.add(new Mark.Region(m.shape(), CHIPS, m.id().toString())));
    PicturePainter.shown(plan, Element.Paving.class, shown)
        .forEach(p -> marks.add(new Mark.Region(p.shape(), PAVING, p.id().toString())));
    for (Element.Building b : PicturePainter.shown(plan, Element.Building.class, shown)) {
      Shape shadow = swept(b.shape(), b.eavesHeight()).and(lot);
      if (!shadow.isEmpty()) {
        marks.add(new Mark.Region(shadow, shadow(plan), "shadow of " + b.id().name()));
      }
    }
    return marks;
  }

  /** What the shape passes over when it is moved up and right by its share of the height. */
  private static Shape swept(Shape shape, Length height) {
    Length by = Length.metres(height.metres() * SHADOW_PER_HEIGHT);
    List<Shape> parts = new ArrayList<>(List.of(shape, shape.moved(by, by)));
    List<Point> corners = shape.corners();
    for (int i = 0; i < corners.size(); i++) {
      Point from = corners.get(i);
      Point to = corners.get((i + 1) % corners.size());
      // An edge that runs along the shadow sweeps nothing.
      double across = to.x().minus(from.x()).metres() - to.y().minus(from.y()).metres();
      if (by.metres() > 0 && Math.abs(across) > LEAST_ACROSS_M) {
        parts.add(Shape.polygon(List.of(from, to, to.moved(by, by), from.moved(by, by))));
      }
    }
    return Shape.union(parts);
  }

  static List<LegendEntry> legend(Plan plan) {
    List<LegendEntry> entries = new ArrayList<>();
    if (plan.lot().isPresent()) {
      OpenGround open = OpenGround.of(plan);
      entries.add(
          LegendEntry.area(
              open == OpenGround.LAWN ? "Lawn or open ground" : open.noun(), style(open)));
    }
    if (!plan.all(Element.MulchedGround.class).isEmpty()) {
      entries.add(LegendEntry.area("Ground under chips", CHIPS));
    }
    if (!plan.all(Element.Paving.class).isEmpty()) {
      entries.add(LegendEntry.area("Paving", PAVING));
    }
    if (plan.lot().isPresent()
        && plan.all(Element.Building.class).stream().anyMatch(b -> !b.neighbour())) {
      entries.add(LegendEntry.area("Shadow", shadow(plan).outlined(Palette.RULE, 0.18)));
    }
    return entries;
  }
}
