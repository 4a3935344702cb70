package yardloom.site.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.element.Show;

/** Swales across their line, as they are dug: one figure for all of one size. */
final class SwaleSection {
  private static final Style BANK =
      Style.filled("section-bank", "#efe6d6").outlined(Palette.INK, 0.35);
  private static final LegendEntry GROUND =
      LegendEntry.area("Existing ground, cut", SlopeSection.EARTH);
  private static final double BANK_M = 0.45;
  private static final double UNDER_M = 0.3;
  private static final double TEXT_MM = 2.5;
  private static final double OFF_M = 0.14;
  private static final double LEAST_WIDTH_MM = 80;
  private static final int METRIC_SCALE = 20;
  private static final int US_SCALE = 24;

  private SwaleSection() {}

  static List<Panel.Figure> figures(Plan plan) {
    Map<ElementId, Berm> berms = new LinkedHashMap<>();
    plan.all(Element.Structure.class)
        .forEach(b -> b.attributes().get(Berm.KEY).ifPresent(berm -> berms.put(berm.of(), berm)));
    Map<Kind, List<String>> kinds = new LinkedHashMap<>();
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      structure
          .attributes()
          .get(LevelWords.SwaleLine.KEY)
          .ifPresent(
              s ->
                  kinds
                      .computeIfAbsent(
                          Kind.of(s.swale(), Optional.ofNullable(berms.get(structure.id()))),
                          k -> new ArrayList<>())
                      .add(Show.name(structure)));
    }
    List<Panel.Figure> figures = new ArrayList<>();
    kinds.forEach((kind, names) -> figures.add(figure(plan, kind, String.join(", ", names))));
    return figures;
  }

  /** Swales of one size with banks of one size, if they have any; a bank is drawn on the right. */
  private record Kind(Swale swale, Optional<Length> top, double sides) {
    static Kind of(Swale swale, Optional<Berm> berm) {
      return new Kind(swale, berm.map(Berm::top), berm.map(Berm::sides).orElse(0.0));
    }
  }

  private static List<Mark> bank(Kind kind, double fromM, UnitSystem units) {
    if (kind.top().isEmpty()) {
      return List.of();
    }
    Berm berm = new Berm(null, kind.swale(), null, kind.top().get(), kind.sides());
    double high = berm.height().metres();
    double run = kind.sides() * high;
    double flat = kind.top().get().metres();
    double foot = fromM + berm.width().metres();
    return List.of(
        new Mark.Region(
            Shape.polygon(
                List.of(
                    at(fromM, 0),
                    at(foot, 0),
                    at(fromM + run + flat, high),
                    at(fromM + run, high))),
            BANK,
            "bank, filled"),
        dimension(at(fromM, 0), at(foot, 0), berm.width(), units, -OFF_M),
        dimension(at(foot, 0), at(foot, high), berm.height(), units, -OFF_M));
  }

  private static Panel.Figure figure(Plan plan, Kind kind, String names) {
    Swale swale = kind.swale();
    UnitSystem units = plan.info().units();
    double half = swale.top().metres() / 2;
    double foot = swale.bottom().metres() / 2;
    double deep = swale.depth().metres();
    double edge = half + BANK_M;
    double right =
        kind.top()
            .map(t -> half + new Berm(null, swale, null, t, kind.sides()).width().metres() + BANK_M)
            .orElse(edge);
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Region(
            Shape.polygon(
                List.of(
                    at(-edge, 0),
                    at(-half, 0),
                    at(-foot, -deep),
                    at(foot, -deep),
                    at(half, 0),
                    at(right, 0),
                    at(right, -deep - UNDER_M),
                    at(-edge, -deep - UNDER_M))),
            SlopeSection.EARTH,
            "ground, cut"));
    marks.add(dimension(at(-half, 0), at(half, 0), swale.top(), units, OFF_M));
    if (foot > 0) {
      marks.add(dimension(at(-foot, -deep), at(foot, -deep), swale.bottom(), units, -OFF_M));
    }
    marks.add(dimension(at(-edge, 0), at(-edge, -deep), swale.depth(), units, -OFF_M));
    marks.addAll(bank(kind, half, units));
    if (swale.sides() > 0) {
      marks.add(
          new Mark.Label(
              at((half + foot) / 2 + BANK_M / 2, -deep / 2 - UNDER_M / 2),
              String.format(
                  Locale.ROOT,
                  "sides %s to 1",
                  Double.toString(swale.sides()).replaceAll("\\.0$", "")),
              TEXT_MM,
              false,
              1,
              Mark.Anchor.CENTRE));
    }
    return new Panel.Figure(
        "Across the swale: " + names,
        marks,
        kind.top().isPresent()
            ? List.of(GROUND, LegendEntry.area("Earth of the swale", BANK))
            : List.of(GROUND),
        LEAST_WIDTH_MM,
        units == UnitSystem.US ? US_SCALE : METRIC_SCALE);
  }

  private static Mark dimension(
      Point from, Point to, Length length, UnitSystem units, double offM) {
    return new Mark.Dimension(from, to, Length.metres(offM), DimensionText.of(length, units));
  }

  private static Point at(double x, double y) {
    return Point.metres(x, y);
  }
}
