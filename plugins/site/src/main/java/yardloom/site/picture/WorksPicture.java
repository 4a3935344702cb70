package yardloom.site.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.site.built.StructurePainter;
import yardloom.site.element.Show;

/** Paths, beds, fences and roofs. */
final class WorksPicture {
  private static final Style PATH =
      Style.filled("picture-path", "#e3cda0").outlined("#b79b66", 0.18);
  private static final Style MULCH =
      Style.filled("picture-mulch", "#b98f63").outlined("#7d5c39", 0.25);
  private static final Style COMPOST =
      Style.filled("picture-compost", "#7a604a").outlined("#54402f", 0.25);
  private static final Style FENCE = Style.line("picture-fence", "#6d5a3c", 0.7);
  private static final Style ROOF_LIGHT =
      Style.filled("picture-roof-light", "#b7a597").outlined("#5e5148", 0.35);
  private static final Style ROOF_DARK =
      Style.filled("picture-roof-dark", "#95847a").outlined("#5e5148", 0.35);
  private static final Style NEIGHBOUR =
      Style.filled("picture-neighbour", "#dcd8d2").outlined("#a19c94", 0.25);
  private static final Style BUILT =
      Style.filled("picture-built", "#a98d6a").outlined("#63492c", 0.35);
  private static final Style SWALE =
      Style.filled("picture-swale", "#9db7a8").outlined("#6f8a79", 0.25);
  static final double NAME_MM = 2.5;

  /** The rank of a name that stands on what it names or is left out, so that beds keep theirs. */
  static final int IF_ROOM = 5;

  private WorksPicture() {}

  /** Of those elements that {@code shown} lets through. */
  static List<Mark> marks(Plan plan, Predicate<Element> shown) {
    List<Mark> marks = new ArrayList<>();
    Shape crowns = CrownPicture.crowns(plan, shown);
    PicturePainter.shown(plan, Element.Path.class, shown)
        .forEach(p -> marks.add(new Mark.Region(p.shape(), PATH, p.id().toString())));
    for (Element.Bed bed : PicturePainter.shown(plan, Element.Bed.class, shown)) {
      marks.add(new Mark.Region(bed.shape(), style(bed), bed.id().toString()));
      marks.add(name(seen(bed.shape(), crowns), Show.name(bed), 4));
    }
    PicturePainter.shown(plan, Element.Fence.class, shown)
        .forEach(f -> marks.add(new Mark.Stroke(f.line(), FENCE, f.id().toString())));
    for (Element.Structure s : PicturePainter.shown(plan, Element.Structure.class, shown)) {
      if (!s.shape().isEmpty()) {
        marks.add(
            new Mark.Region(
                s.shape(), StructurePainter.isSwale(s) ? SWALE : BUILT, s.id().toString()));
        marks.add(name(seen(s.shape(), crowns), Show.name(s), IF_ROOM));
      }
    }
    for (Element.Building b : PicturePainter.shown(plan, Element.Building.class, shown)) {
      if (b.neighbour()) {
        marks.add(new Mark.Region(b.shape(), NEIGHBOUR, b.id().toString()));
      } else {
        marks.addAll(roof(b));
        marks.add(name(b.shape().grownWithCorners(b.overhang()), Show.name(b), 1));
      }
    }
    return marks;
  }

  /** What the crowns above leave to be seen of a shape; all of it if they hide it. */
  private static Shape seen(Shape shape, Shape crowns) {
    Shape seen = shape.minus(crowns);
    return seen.isEmpty() ? shape : seen;
  }

  private static Mark name(Shape shape, String text, int rank) {
    return new Mark.Label(shape.heart(), text, NAME_MM, rank == 1, rank, Mark.Anchor.INSIDE)
        .on(shape);
  }

  private static Style style(Element.Bed bed) {
    return bed.use() == Element.BedUse.ANNUAL ? COMPOST : MULCH;
  }

  /** Two faces that meet over the longer middle line; the one away from the sun is darker. */
  private static List<Mark> roof(Element.Building b) {
    Shape roof = b.shape().grownWithCorners(b.overhang());
    String about = b.id().toString();
    if (b.roof() == Element.RoofForm.FLAT) {
      return List.of(new Mark.Region(roof, ROOF_LIGHT, about));
    }
    Envelope box = roof.bounds();
    boolean wide = box.getWidth() >= box.getHeight();
    Shape half =
        Shape.rectangle(
            Point.metres(
                wide ? box.getMinX() : box.centre().x, wide ? box.centre().y : box.getMinY()),
            Length.metres(wide ? box.getWidth() : box.getWidth() / 2),
            Length.metres(wide ? box.getHeight() / 2 : box.getHeight()));
    return Stream.of(
            new Mark.Region(roof.minus(half), ROOF_LIGHT, about),
            new Mark.Region(roof.and(half), ROOF_DARK, about))
        .filter(m -> !m.shape().isEmpty())
        .map(m -> (Mark) m)
        .toList();
  }

  static List<LegendEntry> legend(Plan plan) {
    List<LegendEntry> entries = new ArrayList<>();
    List<Element.Bed> beds = plan.all(Element.Bed.class);
    if (beds.stream().anyMatch(b -> b.use() != Element.BedUse.ANNUAL)) {
      entries.add(LegendEntry.area("Mulched bed", MULCH));
    }
    if (beds.stream().anyMatch(b -> b.use() == Element.BedUse.ANNUAL)) {
      entries.add(LegendEntry.area("Bed of annuals", COMPOST));
    }
    if (!plan.all(Element.Path.class).isEmpty()) {
      entries.add(LegendEntry.area("Path", PATH));
    }
    if (!plan.all(Element.Fence.class).isEmpty()) {
      entries.add(LegendEntry.line("Fence, wall or hedge", FENCE));
    }
    List<Element.Structure> structures =
        plan.all(Element.Structure.class).stream().filter(s -> !s.shape().isEmpty()).toList();
    if (structures.stream().anyMatch(StructurePainter::isSwale)) {
      entries.add(LegendEntry.area("Swale", SWALE));
    }
    if (structures.stream().anyMatch(s -> !StructurePainter.isSwale(s))) {
      entries.add(LegendEntry.area("Shed, frame or tank", BUILT));
    }
    addBuildings(plan.all(Element.Building.class), entries);
    return entries;
  }

  private static void addBuildings(List<Element.Building> buildings, List<LegendEntry> entries) {
    if (buildings.stream().anyMatch(b -> !b.neighbour())) {
      entries.add(LegendEntry.area("Building", ROOF_LIGHT));
    }
    if (buildings.stream().anyMatch(Element.Building::neighbour)) {
      entries.add(LegendEntry.area("Neighbour's building", NEIGHBOUR));
    }
  }
}
