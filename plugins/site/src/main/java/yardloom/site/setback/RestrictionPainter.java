package yardloom.site.setback;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.element.Show;
import yardloom.site.tree.TreeRootRules;

/**
 * Outlines of ground that rules bind: sight triangles with their legs measured and the heights that
 * stay clear, easements, clearances, protected roots, setbacks of upper floors. Outlines only, for
 * other things may be seen under them.
 *
 * <p>References: [1] Goochland County, Virginia, plot plan checklist: easement lines are dashed.
 */
public final class RestrictionPainter implements Painter {
  /** Leg measures stand this far outside of the triangle. */
  private static final Length BESIDE_LEG = Length.metres(0.6);

  private static final double TEXT_MM = 2;
  private static final double NEAR_LONG = 0.4;

  @Override
  public Layer layer() {
    return new Layer("site.restriction", "Sight, easement and clearance", Layer.Band.NOTES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    UnitSystem units = plan.info().units();
    for (Attributes.Entry<Restriction> entry : plan.attributes().all(Restriction.KEY)) {
      Restriction rule = entry.value();
      if (rule.ground().isEmpty()) {
        continue;
      }
      marks.add(new Mark.Region(rule.ground(), style(rule.kind()), rule.reason()));
      if (rule.kind() != Restriction.Kind.SIGHT_TRIANGLE) {
        marks.add(label(rule.ground().heart(), Show.capital(rule.reason())));
      }
    }
    for (Attributes.Entry<SightWords.Legs> legs : plan.attributes().all(SightWords.Legs.KEY)) {
      sight(legs.value(), units, marks);
    }
    plan.lot()
        .ifPresent(
            lot -> {
              for (SetbackGround.Banded banded : SetbackGround.banded(plan, lot)) {
                String name = "setback at some heights from " + banded.rule().side();
                marks.add(
                    new Mark.Region(
                        banded.ground().and(lot.insideSetbacks()), Palette.HIGH_SETBACK, name));
              }
            });
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      TreeRootRules.zone(plan, tree)
          .ifPresent(z -> marks.add(new Mark.Region(z, Palette.ROOTS, "roots of " + tree.id())));
    }
    return marks;
  }

  private static Style style(Restriction.Kind kind) {
    return switch (kind) {
      case SIGHT_TRIANGLE -> Palette.SIGHT;
      case EASEMENT -> Palette.EASEMENT;
      case CLEARANCE -> Palette.CLEARANCE;
    };
  }

  private static Mark label(Point at, String text) {
    return new Mark.Label(at, text, TEXT_MM, false, 2, Mark.Anchor.CENTRE);
  }

  private static void sight(SightWords.Legs legs, UnitSystem units, List<Mark> marks) {
    leg(legs.corner(), legs.first(), legs.second(), units, marks);
    leg(legs.corner(), legs.second(), legs.first(), units, marks);
    // Nearer to the long side: the corner is often cut off or rounded, and measured there.
    Point corner = legs.corner();
    Point at =
        corner.moved(
            legs.first().x().plus(legs.second().x()).minus(corner.x().times(2)).times(NEAR_LONG),
            legs.first().y().plus(legs.second().y()).minus(corner.y().times(2)).times(NEAR_LONG));
    String heights =
        DimensionText.of(legs.clear().from(), units)
            + " to "
            + DimensionText.of(legs.clear().to(), units);
    marks.add(label(at, "Sight triangle\nclear from " + heights));
  }

  /** The measure of a leg, on the far side of it from the triangle. */
  private static void leg(
      Point corner, Point end, Point other, UnitSystem units, List<Mark> marks) {
    double cross =
        (end.x().metres() - corner.x().metres()) * (other.y().metres() - corner.y().metres())
            - (end.y().metres() - corner.y().metres()) * (other.x().metres() - corner.x().metres());
    Length offset = cross > 0 ? BESIDE_LEG.negative() : BESIDE_LEG;
    marks.add(
        new Mark.Dimension(corner, end, offset, DimensionText.of(corner.distance(end), units)));
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    Map<Style, String> texts = new LinkedHashMap<>();
    for (Mark mark : paint(plan, facts)) {
      if (mark instanceof Mark.Region region) {
        texts.putIfAbsent(region.style(), said(plan, region.style()));
      }
    }
    return texts.entrySet().stream().map(e -> LegendEntry.line(e.getValue(), e.getKey())).toList();
  }

  private static String said(Plan plan, Style style) {
    if (style.equals(Palette.SIGHT)) {
      return "Sight triangle";
    }
    if (style.equals(Palette.EASEMENT)) {
      return "Easement";
    }
    if (style.equals(Palette.CLEARANCE)) {
      return "Edge of clearance";
    }
    return style.equals(Palette.ROOTS)
        ? String.format(
            Locale.ROOT, "Protected roots, %s trunk diameters", number(TreeRootRules.factor(plan)))
        : "Setback at some heights only";
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.LAYOUT);
  }
}
