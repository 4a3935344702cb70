package yardloom.site.picture;

import java.util.ArrayList;
import java.util.List;
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
  private static final Style PAVING =
      Style.filled("picture-paving", "#d9d6cf").outlined("#a8a398", 0.18);
  private static final Style SHADOW = Style.filled("picture-shadow", "#a3b785");

  /** As with the sun halfway up in the south-west. */
  private static final double SHADOW_PER_HEIGHT = 0.5;

  /** More than any sheet shows: the tint runs on to the edge of the picture. */
  private static final double AROUND_M = 500;

  private static final int SWEEP = 12;

  private GroundPicture() {}

  static List<Mark> marks(Plan plan) {
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
      marks.add(new Mark.Region(lot, LAWN, "lawn"));
    }
    plan.all(Element.Paving.class)
        .forEach(p -> marks.add(new Mark.Region(p.shape(), PAVING, p.id().toString())));
    for (Element.Building b : plan.all(Element.Building.class)) {
      Shape shadow = swept(b.shape(), b.eavesHeight()).and(lot);
      if (!shadow.isEmpty()) {
        marks.add(new Mark.Region(shadow, SHADOW, "shadow of " + b.id().name()));
      }
    }
    return marks;
  }

  private static Shape swept(Shape shape, Length height) {
    List<Shape> steps = new ArrayList<>();
    double reachM = height.metres() * SHADOW_PER_HEIGHT;
    for (int i = 0; i <= SWEEP; i++) {
      Length by = Length.metres(reachM * i / SWEEP);
      steps.add(shape.moved(by, by));
    }
    return Shape.union(steps);
  }

  static List<LegendEntry> legend(Plan plan) {
    List<LegendEntry> entries = new ArrayList<>();
    if (plan.lot().isPresent()) {
      entries.add(LegendEntry.area("Lawn or open ground", LAWN));
    }
    if (!plan.all(Element.Paving.class).isEmpty()) {
      entries.add(LegendEntry.area("Paving", PAVING));
    }
    if (plan.lot().isPresent()
        && plan.all(Element.Building.class).stream().anyMatch(b -> !b.neighbour())) {
      entries.add(LegendEntry.area("Shadow", SHADOW.outlined(Palette.RULE, 0.18)));
    }
    return entries;
  }
}
