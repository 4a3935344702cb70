package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
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
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.element.Show;

/**
 * A section through the middle of the lot, along the plan or across it, whichever falls more; as
 * far as levels are known. Heights are drawn as large as lengths.
 */
final class SlopeSection {
  private static final double STEP_M = 0.25;
  private static final double BELOW_M = 0.6;
  private static final double TEXT_MM = 2.5;
  private static final double WIDTH_MM = 200;

  /** Every other name stands higher, so that those of neighbours have room. */
  private static final double HIGHER_M = 0.8;

  private static final double OFF_M = 0.5;
  static final Style EARTH =
      Style.filled("section-ground", "#e9dfd0").hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.35);
  private static final Style LEVEL = Style.line("section-level", Palette.MUTED, 0.18).dashed("2 1");

  private static final Style BED = Style.line("section-bed", "#4f7f3a", 1);
  private static final Style SWALE = Style.line("section-swale", "#2f6f9a", 1);
  private static final Style BERM = Style.line("section-berm", "#6b5330", 1);
  private static final Style HOUSE = Style.line("section-building", Palette.INK, 1);

  private static final Style LED = Style.line("section-name", Palette.MUTED, 0.18);

  static final String LETTER = "A";
  static final String NAME = LETTER + "–" + LETTER;

  /** Ground that falls less over the whole lot is called level. */
  private static final double LEAST_FALL_M = 0.3;

  /** Names stand so far over the ground that they name. */
  private static final double NAME_OVER_M = 0.55;

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
  private static Optional<SlopeSection> of(Plan plan, Surface surface) {
    if (plan.lot().isEmpty()) {
      return Optional.empty();
    }
    SlopeSection along = of(plan, surface, false);
    SlopeSection across = of(plan, surface, true);
    SlopeSection steeper = across.fallM() > along.fallM() ? across : along;
    return steeper.samples.size() < 2 ? Optional.empty() : Optional.of(steeper);
  }

  /** That of a lot which falls enough for it. */
  static Optional<SlopeSection> worthDrawing(Plan plan) {
    return plan.attributes()
        .get(Surface.KEY)
        .flatMap(s -> of(plan, s))
        .filter(s -> s.fallM() >= LEAST_FALL_M);
  }

  private static SlopeSection of(Plan plan, Surface surface, boolean across) {
    Shape lot = plan.lot().map(Lot::shape).orElseThrow();
    Envelope box = lot.bounds();
    Point middle = lot.heart();
    double start = across ? box.getMinX() : box.getMinY();
    double length = across ? box.getWidth() : box.getHeight();
    List<Sample> samples = new ArrayList<>();
    int steps = (int) Math.ceil(length / STEP_M);
    for (int i = 0; i <= steps; i++) {
      double here = start + length * i / steps;
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

  /** Where it is cut, from its left end to its right. */
  Line cut() {
    return Line.between(samples.get(0).at(), samples.get(samples.size() - 1).at());
  }

  /** Which way one looks at it: its first end is on the left. */
  Angle seen() {
    return Angle.degrees(across ? 0 : 270);
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
    levels(ground, units, marks);
    crossed(first, zero, marks);
    measures(ground, units, marks);
    List<LegendEntry> legend = new ArrayList<>();
    legend.add(LegendEntry.area("Existing ground, cut", EARTH));
    legend.add(LegendEntry.line("Level of the lowest ground", LEVEL));
    drawn(BED, "Bed", marks, legend);
    drawn(SWALE, "Swale", marks, legend);
    drawn(BERM, "Bank of a swale's earth", marks, legend);
    drawn(HOUSE, "Building", marks, legend);
    String title = "Section " + NAME + " through the middle of the lot, " + ends();
    return new Panel.Figure(title, marks, legend, WIDTH_MM, 0);
  }

  private static void drawn(Style style, String name, List<Mark> marks, List<LegendEntry> legend) {
    if (marks.stream().anyMatch(m -> m instanceof Mark.Stroke s && s.style().equals(style))) {
      legend.add(LegendEntry.line(name, style));
    }
  }

  private String ends() {
    return across ? "left to right of the plan" : "bottom to top of the plan";
  }

  private void levels(List<Point> ground, UnitSystem units, List<Mark> marks) {
    int last = ground.size() - 1;
    for (int i : new int[] {0, ground.size() / 2, last}) {
      String level = LevelText.of(plan, Length.metres(samples.get(i).levelM()));
      // In the middle under the ground, since names stand over it.
      double over = i == 0 || i == last ? NAME_OVER_M : -NAME_OVER_M;
      Point at = ground.get(i).moved(Length.ZERO, Length.metres(over));
      marks.add(new Mark.Label(at, level, TEXT_MM, false, 1, Mark.Anchor.CENTRE));
    }
  }

  /** How long it is and how much it falls. */
  private void measures(List<Point> ground, UnitSystem units, List<Mark> marks) {
    Length length = ground.get(ground.size() - 1).x();
    Point low = Point.metres(0, -BELOW_M);
    marks.add(
        new Mark.Dimension(
            low,
            Point.metres(length.metres(), -BELOW_M),
            Length.metres(-OFF_M),
            DimensionText.of(length, units)));
  }

  /** Marks on the ground what the section cuts, and names it over its middle. */
  private void crossed(double first, double zero, List<Mark> marks) {
    TreeMap<Double, Element> cut = new TreeMap<>();
    for (Element e : plan.elements()) {
      boolean named =
          e instanceof Element.Bed
              || e instanceof Element.Building
              || e instanceof Element.Structure;
      samples.stream()
          .filter(s -> named && e.shape().contains(s.at()))
          .findFirst()
          .ifPresent(s -> cut.put(s.alongM(), e));
    }
    boolean higher = false;
    for (Element e : cut.values()) {
      List<Point> along =
          samples.stream()
              .filter(s -> e.shape().contains(s.at()))
              .map(s -> Point.metres(s.alongM() - first, s.levelM() - zero))
              .toList();
      if (along.size() > 1) {
        marks.add(new Mark.Stroke(Line.through(along), style(e), e.id().toString()));
        Point middle = along.get(along.size() / 2);
        double over = NAME_OVER_M + (higher ? HIGHER_M : 0);
        if (higher) {
          Point under = middle.moved(Length.ZERO, Length.metres(HIGHER_M));
          marks.add(new Mark.Stroke(Line.between(middle, under), LED, "name"));
        }
        Point at = middle.moved(Length.ZERO, Length.metres(over));
        marks.add(new Mark.Label(at, Show.name(e), TEXT_MM, false, 2, Mark.Anchor.CENTRE));
        higher = !higher;
      }
    }
  }

  private static Style style(Element e) {
    if (e instanceof Element.Building) {
      return HOUSE;
    }
    if (e.attributes().get(Berm.KEY).isPresent()) {
      return BERM;
    }
    return e.attributes().get(LevelWords.SwaleLine.KEY).isPresent() ? SWALE : BED;
  }
}
