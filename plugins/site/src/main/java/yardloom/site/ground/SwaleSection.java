package yardloom.site.ground;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.element.Show;

/** Swales across their line, as they are dug: one figure for all of one size. */
final class SwaleSection {
  private static final double BANK_M = 0.45;
  private static final double UNDER_M = 0.3;
  private static final double TEXT_MM = 2.5;
  private static final double OFF_M = 0.14;
  private static final double LEAST_WIDTH_MM = 80;
  private static final int METRIC_SCALE = 20;
  private static final int US_SCALE = 24;

  private SwaleSection() {}

  static List<Panel.Figure> figures(Plan plan) {
    Map<Swale, List<String>> kinds = new LinkedHashMap<>();
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      structure
          .attributes()
          .get(LevelWords.SwaleLine.KEY)
          .ifPresent(
              s ->
                  kinds
                      .computeIfAbsent(s.swale(), k -> new ArrayList<>())
                      .add(Show.name(structure)));
    }
    List<Panel.Figure> figures = new ArrayList<>();
    kinds.forEach((swale, names) -> figures.add(figure(plan, swale, String.join(", ", names))));
    return figures;
  }

  private static Panel.Figure figure(Plan plan, Swale swale, String names) {
    UnitSystem units = plan.info().units();
    double half = swale.top().metres() / 2;
    double foot = swale.bottom().metres() / 2;
    double deep = swale.depth().metres();
    double edge = half + BANK_M;
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
                    at(edge, 0),
                    at(edge, -deep - UNDER_M),
                    at(-edge, -deep - UNDER_M))),
            SlopeSection.EARTH,
            "ground, cut"));
    marks.add(dimension(at(-half, 0), at(half, 0), swale.top(), units, OFF_M));
    if (foot > 0) {
      marks.add(dimension(at(-foot, -deep), at(foot, -deep), swale.bottom(), units, -OFF_M));
    }
    marks.add(dimension(at(-edge, 0), at(-edge, -deep), swale.depth(), units, -OFF_M));
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
        List.of(LegendEntry.area("Existing ground, cut", SlopeSection.EARTH)),
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
