package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * A section through the middle of the lot, along the plan or across it, whichever falls more; as
 * far as levels are known. Heights are drawn as large as lengths.
 */
final class SlopeSection {
  private static final double STEP_M = 0.25;
  private static final double BELOW_M = 0.6;
  private static final double TEXT_MM = 2.5;
  private static final double WIDTH_MM = 280;
  private static final Style EARTH =
      Style.filled("section-ground", "#e9dfd0").hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.35);
  private static final Style LEVEL = Style.line("section-level", Palette.MUTED, 0.18).dashed("2 1");

  private final Plan plan;
  private final boolean across;
  private final List<Sample> samples;

  /** A point of the ground: how far along, where, how high. */
  private record Sample(double alongM, Point at, double levelM) {}

  private SlopeSection(Plan plan, boolean across, List<Sample> samples) {
    this.plan = plan;
    this.across = across;
    this.samples = samples;
  }

  /** Empty if levels are known along neither line. */
  static Optional<SlopeSection> of(Plan plan, Surface surface) {
    if (plan.lot().isEmpty()) {
      return Optional.empty();
    }
    SlopeSection along = of(plan, surface, false);
    SlopeSection across = of(plan, surface, true);
    SlopeSection steeper = across.fallM() > along.fallM() ? across : along;
    return steeper.samples.size() < 2 ? Optional.empty() : Optional.of(steeper);
  }

  private static SlopeSection of(Plan plan, Surface surface, boolean across) {
    Shape lot = plan.lot().map(Lot::shape).orElseThrow();
    Envelope box = lot.bounds();
    Point middle = lot.heart();
    double start = across ? box.getMinX() : box.getMinY();
    double length = across ? box.getWidth() : box.getHeight();
    List<Sample> samples = new ArrayList<>();
    for (int i = 0; i * STEP_M <= length; i++) {
      double here = start + i * STEP_M;
      Point at =
          across
              ? Point.metres(here, middle.y().metres())
              : Point.metres(middle.x().metres(), here);
      if (lot.contains(at)) {
        surface.levelAt(at).ifPresent(z -> samples.add(new Sample(here, at, z.metres())));
      }
    }
    return new SlopeSection(plan, across, List.copyOf(samples));
  }

  /** From the highest to the lowest ground of the section. */
  double fallM() {
    double high = samples.stream().mapToDouble(Sample::levelM).max().orElse(0);
    return high - low();
  }

  private double low() {
    return samples.stream().mapToDouble(Sample::levelM).min().orElse(0);
  }

  Panel.Figure figure(UnitSystem units) {
    double zero = low();
    double first = samples.get(0).alongM();
    List<Point> outline = new ArrayList<>();
    List<Point> ground = new ArrayList<>();
    samples.forEach(s -> ground.add(Point.metres(s.alongM() - first, s.levelM() - zero)));
    outline.addAll(ground);
    outline.add(Point.metres(ground.get(ground.size() - 1).x().metres(), -BELOW_M));
    outline.add(Point.metres(0, -BELOW_M));
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Region(Shape.polygon(outline), EARTH, "ground as measured"));
    marks.add(
        new Mark.Stroke(
            Line.between(
                Point.metres(0, 0), Point.metres(ground.get(ground.size() - 1).x().metres(), 0)),
            LEVEL,
            "level of the lowest ground"));
    levels(ground, zero, units, marks);
    crossed(first, zero, marks);
    String title = "Section through the middle of the lot, " + ends();
    return new Panel.Figure(
        title,
        marks,
        List.of(
            LegendEntry.area("Existing ground, cut", EARTH),
            LegendEntry.line("Level of the lowest ground", LEVEL)),
        WIDTH_MM,
        0);
  }

  private String ends() {
    return across ? "left to right of the plan" : "bottom to top of the plan";
  }

  private void levels(List<Point> ground, double zero, UnitSystem units, List<Mark> marks) {
    for (int i : new int[] {0, ground.size() / 2, ground.size() - 1}) {
      Length level = Length.metres(samples.get(i).levelM());
      marks.add(
          new Mark.Label(
              ground.get(i), DimensionText.of(level, units), TEXT_MM, false, 1, Mark.Anchor.NEAR));
    }
  }

  /** Names what the section cuts, over its middle. */
  private void crossed(double first, double zero, List<Mark> marks) {
    for (Element e : plan.elements()) {
      boolean named =
          e instanceof Element.Bed
              || e instanceof Element.Building
              || e instanceof Element.Structure;
      List<Sample> within =
          named ? samples.stream().filter(s -> e.shape().contains(s.at())).toList() : List.of();
      if (!within.isEmpty()) {
        Sample middle = within.get(within.size() / 2);
        marks.add(
            new Mark.Label(
                Point.metres(middle.alongM() - first, middle.levelM() - zero),
                e.id().name(),
                TEXT_MM,
                false,
                2,
                Mark.Anchor.NEAR));
      }
    }
  }
}
