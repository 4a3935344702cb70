package yardloom.site.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import yardloom.facts.FlatCrown;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.site.element.Show;

/**
 * Crowns of trees as lobed discs, those trained flat along their wires, lit from the upper left.
 */
final class CrownPicture {
  private static final Style SHADE = Style.filled("picture-crown-shade", "#5b7a41");
  private static final Style DECIDUOUS =
      Style.filled("picture-crown", "#7fa862").outlined("#3f6130", 0.25);
  private static final Style DECIDUOUS_LIGHT = Style.filled("picture-crown-light", "#9cc47d");
  private static final Style EVERGREEN =
      Style.filled("picture-evergreen", "#5d8a68").outlined("#2d5238", 0.25);
  private static final Style EVERGREEN_LIGHT = Style.filled("picture-evergreen-light", "#79a783");
  private static final Style STEM = Style.filled("picture-stem", "#5a4632");
  private static final int STEPS_PER_LOBE = 10;
  private static final double LOBE_DEPTH = 0.12;
  private static final double LOBE_M = 0.9;
  private static final double STEM_M = 0.12;

  /** Of the radius or of half the width, from the stem to the middle of the name. */
  private static final double NAME_OFF = 0.45;

  private CrownPicture() {}

  /** Of those elements that {@code shown} lets through. */
  static List<Mark> marks(Plan plan, Predicate<Element> shown) {
    List<Mark> marks = new ArrayList<>();
    for (Element.Tree tree : PicturePainter.shown(plan, Element.Tree.class, shown)) {
      String about = tree.id().toString();
      double radius = tree.crown().metres() / 2;
      if (radius <= 0) {
        continue;
      }
      boolean deciduous = tree.leaf() == Element.Leaf.DECIDUOUS;
      Style body = deciduous ? DECIDUOUS : EVERGREEN;
      Style light = deciduous ? DECIDUOUS_LIGHT : EVERGREEN_LIGHT;
      Optional<FlatCrown> flat = tree.attributes().get(FlatCrown.KEY);
      Shape crown =
          flat.map(f -> f.about(tree.at())).orElseGet(() -> lobed(tree.at(), radius, 0, 0, 1));
      if (flat.isPresent()) {
        FlatCrown along = flat.get();
        FlatCrown inner =
            new FlatCrown(along.width().times(0.9), along.depth().times(0.4), along.bearing());
        marks.add(new Mark.Region(crown, body, about));
        marks.add(new Mark.Region(inner.about(tree.at()), light, about));
      } else {
        marks.add(new Mark.Region(lobed(tree.at(), radius, 0.08, -0.08, 1), SHADE, about));
        marks.add(new Mark.Region(crown, body, about));
        marks.add(new Mark.Region(lobed(tree.at(), radius, -0.16, 0.16, 0.62), light, about));
      }
      marks.add(
          new Mark.Region(
              lobed(tree.at(), Math.max(STEM_M, tree.trunk().metres() / 2), 0, 0, 1), STEM, about));
      marks.add(name(tree, crown, flat));
    }
    return marks;
  }

  /** Off the stem: in the lower part of a round crown, on one arm of a tree trained flat. */
  private static Mark name(Element.Tree tree, Shape crown, Optional<FlatCrown> flat) {
    double turn = flat.map(f -> StrictMath.toRadians(f.bearing().degrees())).orElse(0.0);
    double offM = NAME_OFF * flat.map(FlatCrown::width).orElse(tree.crown()).metres() / 2;
    Point at =
        Point.metres(
            tree.at().x().metres() - offM * StrictMath.sin(turn),
            tree.at().y().metres() - offM * StrictMath.cos(turn));
    return new Mark.Label(
            at,
            Show.name(tree),
            WorksPicture.NAME_MM,
            false,
            WorksPicture.IF_ROOM,
            Mark.Anchor.INSIDE)
        .on(crown);
  }

  /** Round crowns of those elements, under which nothing is read. */
  static Shape crowns(Plan plan, Predicate<Element> shown) {
    return Shape.union(
        PicturePainter.shown(plan, Element.Tree.class, shown).stream()
            .filter(t -> t.crown().metres() > 0)
            .filter(t -> t.attributes().get(FlatCrown.KEY).isEmpty())
            .map(t -> lobed(t.at(), t.crown().metres() / 2, 0, 0, 1))
            .toList());
  }

  /** A disc with lobes of about equal width, moved and shrunk by shares of its radius. */
  private static Shape lobed(Point at, double radiusM, double right, double up, double size) {
    int lobes = (int) Math.max(6, Math.round(2 * Math.PI * radiusM / LOBE_M));
    List<Point> ring = new ArrayList<>();
    int steps = lobes * STEPS_PER_LOBE;
    for (int i = 0; i < steps; i++) {
      double angle = 2 * Math.PI * i / steps;
      double bulge = Math.abs(StrictMath.sin(lobes * angle / 2));
      double r = radiusM * size * (1 - LOBE_DEPTH * (1 - bulge));
      ring.add(
          Point.metres(
              at.x().metres() + right * radiusM + r * StrictMath.cos(angle),
              at.y().metres() + up * radiusM + r * StrictMath.sin(angle)));
    }
    return Shape.polygon(ring);
  }

  static List<LegendEntry> legend(Plan plan) {
    List<LegendEntry> entries = new ArrayList<>();
    Map<Boolean, List<Element.Tree>> trees =
        plan.all(Element.Tree.class).stream()
            .filter(t -> t.crown().metres() > 0)
            .collect(Collectors.partitioningBy(t -> t.attributes().get(FlatCrown.KEY).isPresent()));
    List<Element.Tree> round = trees.get(false);
    if (round.stream().anyMatch(t -> t.leaf() == Element.Leaf.DECIDUOUS)) {
      entries.add(LegendEntry.area("Deciduous tree", DECIDUOUS));
    }
    if (round.stream().anyMatch(t -> t.leaf() != Element.Leaf.DECIDUOUS)) {
      entries.add(LegendEntry.area("Evergreen tree", EVERGREEN));
    }
    if (!trees.get(true).isEmpty()) {
      entries.add(LegendEntry.area("Tree trained flat", DECIDUOUS));
    }
    return entries;
  }
}
