package yardloom.planting.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.canopy.GrownShare;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/**
 * A section along a bed through a tree that stands in it: heights and spreads grown, and in the
 * first year, of what stands within half its spread, or half its spacing, of the cut.
 */
public final class GuildSection {
  private static final double WIDTH_MM = 150;
  private static final int SIDES = 24;

  /** Where crowns of trees begin, and how thick stems are drawn: common practice. */
  private static final double CLEAR_STEM = 0.3;

  private static final double STEM_M = 0.15;
  private static final double LETTERS_MM = 2.2;

  /** Below this a key stands above its plant; within that of one of its kind it is left out. */
  private static final double LOW_M = 1;

  private static final double APART_M = 1.2;
  private static final double SAME_M = 1e-6;
  private static final Style GROUND = Style.line("section-ground", Palette.INK, 0.5);
  private static final Style RULER = Style.line("section-height", Palette.RULE, 0.13);
  private static final Style STEM = Style.filled("section-stem", Palette.MUTED);
  private static final Style GROWN =
      Style.filled("section-grown", "#dfe9d2").outlined(Palette.INK, 0.25);
  private static final Style LEAFY = GROWN.hatched(Hatch.DIAGONAL);
  private static final Style EVERGREEN =
      new Style(
          "section-evergreen", LEAFY.fill(), LEAFY.hatch(), LEAFY.stroke(), LEAFY.strokeMm(), "");
  private static final Style FIRST =
      Style.line("section-year-1", Palette.INK, 0.18).dashed("1 0.6");

  /** One plant in the section. */
  private record Cut(Plant plant, String key, double xM, double heightM, double spreadM) {}

  private GuildSection() {}

  /**
   * The section through the bed of a tree of a named kind that cuts most kinds, the first of
   * equals; empty if no such tree stands in a bed.
   */
  public static Optional<Panel.Figure> of(
      PlantPlaces places, Map<String, String> keys, UnitSystem units) {
    Element.Bed bed = null;
    List<Cut> most = List.of();
    for (Planting.Specimen tree : places.specimens()) {
      Optional<Element.Bed> in =
          places.drawn().stream()
              .map(Planting::bed)
              .filter(b -> b.shape().contains(tree.tree().at()))
              .findFirst();
      if (in.isPresent()) {
        List<Cut> cuts = cuts(in.get(), tree, places, keys, LongAxis.of(in.get().shape()));
        if (kinds(cuts) > kinds(most)) {
          most = cuts;
          bed = in.get();
        }
      }
    }
    return bed == null ? Optional.empty() : Optional.of(figure(bed, most, units));
  }

  private static long kinds(List<Cut> cuts) {
    return cuts.stream().map(Cut::key).distinct().count();
  }

  private static Panel.Figure figure(Element.Bed bed, List<Cut> cuts, UnitSystem units) {
    LongAxis axis = LongAxis.of(bed.shape());
    List<Mark> marks = new ArrayList<>();
    double length = axis.length().metres();
    double top = cuts.stream().mapToDouble(Cut::heightM).max().orElse(1);
    Length step = units == UnitSystem.US ? Length.feet(5) : Length.metres(2);
    for (Length h = step; h.metres() < top + step.metres(); h = h.plus(step)) {
      marks.add(stroke(0, h.metres(), length, h.metres(), RULER));
      marks.add(label(-length * 0.04, h.metres(), Say.distance(h, units)));
    }
    cuts.stream()
        .sorted(Comparator.comparingDouble(Cut::heightM).reversed().thenComparingDouble(Cut::xM))
        .forEach(c -> draw(marks, c));
    keys(marks, cuts);
    marks.add(stroke(0, 0, length, 0, GROUND));
    return new Panel.Figure(
        "Section along " + bed.id().name(),
        marks,
        List.of(
            LegendEntry.area("grown", GROWN),
            LegendEntry.area("grown, keeps its leaves", EVERGREEN),
            LegendEntry.line("in the first year", FIRST)),
        WIDTH_MM,
        0);
  }

  private static List<Cut> cuts(
      Element.Bed bed,
      Planting.Specimen tree,
      PlantPlaces places,
      Map<String, String> keys,
      LongAxis axis) {
    List<Cut> cuts = new ArrayList<>();
    double[] through = along(axis, tree.tree().at());
    for (Planting.Specimen s : places.specimens()) {
      double[] place = along(axis, s.tree().at());
      double crown = s.crown().metres();
      if (bed.shape().contains(s.tree().at()) && Math.abs(place[1] - through[1]) <= crown / 2) {
        cuts.add(
            new Cut(
                s.plant(),
                keys.get(s.plant().name()),
                place[0],
                s.plant().size().height().middle().metres(),
                crown));
      }
    }
    for (Planting p : places.drawn()) {
      double spread = p.plant().size().spread().middle().metres();
      double reach = Math.max(spread, p.spacing().metres()) / 2;
      boolean here = p.bed().id().equals(bed.id());
      for (Point at : here ? p.at() : List.<Point>of()) {
        double[] place = along(axis, at);
        double aside = place[1] - through[1];
        // Of two rows just as far from the cut the one is shown.
        if (aside > SAME_M - reach && aside < SAME_M + reach) {
          cuts.add(
              new Cut(
                  p.plant(),
                  keys.get(p.plant().name()),
                  place[0],
                  p.plant().size().height().middle().metres(),
                  spread));
        }
      }
    }
    return cuts;
  }

  /** How far along and across the bed a point lies. */
  private static double[] along(LongAxis axis, Point at) {
    Point from = axis.at(Length.ZERO, Length.ZERO);
    Point to = axis.at(Length.metres(1), Length.ZERO);
    double dx = to.x().metres() - from.x().metres();
    double dy = to.y().metres() - from.y().metres();
    double x = at.x().metres() - from.x().metres();
    double y = at.y().metres() - from.y().metres();
    return new double[] {x * dx + y * dy, y * dx - x * dy};
  }

  private static void draw(List<Mark> marks, Cut cut) {
    boolean tree = cut.plant().growth().form() == Plant.Form.TREE;
    double base = tree ? cut.heightM() * CLEAR_STEM : 0;
    if (tree) {
      Point corner = Point.metres(cut.xM() - STEM_M / 2, 0);
      marks.add(
          new Mark.Region(
              Shape.rectangle(corner, Length.metres(STEM_M), Length.metres(base * 1.3)),
              STEM,
              "stem"));
    }
    boolean evergreen = cut.plant().growth().season() == Plant.Season.EVERGREEN;
    Shape grown = crown(cut.xM(), base, cut.heightM(), cut.spreadM());
    marks.add(new Mark.Region(grown, evergreen ? EVERGREEN : GROWN, cut.plant().name()));
    double share = GrownShare.share(cut.plant(), Stage.YEAR_1);
    if (share < 1) {
      Shape first = crown(cut.xM(), base * share, cut.heightM() * share, cut.spreadM() * share);
      marks.add(new Mark.Region(first, FIRST, cut.plant().name() + " in the first year"));
    }
  }

  /** Keys in crowns, or above what is low; of neighbours of one kind only the first. */
  private static void keys(List<Mark> marks, List<Cut> cuts) {
    Map<String, Double> last = new HashMap<>();
    cuts.stream()
        .sorted(Comparator.comparingDouble(Cut::xM))
        .forEach(
            c -> {
              Double before = last.put(c.key(), c.xM());
              if (before == null || c.xM() - before > APART_M) {
                boolean low = c.heightM() < LOW_M;
                double y = low ? c.heightM() + LOW_M / 4 : c.heightM() * 0.65;
                marks.add(label(c.xM(), y, c.key()));
              }
            });
  }

  /** An ellipse between two heights; what stands on the ground has its lower half cut off. */
  private static Shape crown(double x, double baseM, double topM, double spreadM) {
    boolean onGround = baseM == 0;
    double half = onGround ? topM : (topM - baseM) / 2;
    double middle = onGround ? 0 : (topM + baseM) / 2;
    int steps = onGround ? SIDES / 2 : SIDES;
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < (onGround ? steps + 1 : steps); i++) {
      double turn = 2 * Math.PI * i / SIDES;
      ring.add(
          Point.metres(
              x + spreadM / 2 * StrictMath.cos(turn), middle + half * StrictMath.sin(turn)));
    }
    return Shape.polygon(ring);
  }

  private static Mark stroke(double x, double y, double toX, double toY, Style style) {
    Line line = Line.between(Point.metres(x, y), Point.metres(toX, toY));
    return new Mark.Stroke(line, style, "height");
  }

  private static Mark label(double x, double y, String text) {
    return new Mark.Label(Point.metres(x, y), text, LETTERS_MM, false, 2, Mark.Anchor.CENTRE);
  }
}
