package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.draw.DimensionText;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Slope;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.site.element.Show;

/**
 * Swales: the edge of what is dug, the edge of the bottom, and where levels are known the level of
 * a level one with arrows for the water that comes down to it, or the fall of a falling one with
 * arrows along it.
 */
public final class SwalePainter implements Painter {
  private static final Length LEVEL = Length.inches(1);
  private static final Length ABOVE = Length.metres(0.7);
  private static final double[] PLACES = {0.2, 0.5, 0.8};
  private static final double TEXT_MM = 2;

  @Override
  public Layer layer() {
    return new Layer("site.swale", "Swales", Layer.Band.WORKS);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    Optional<Surface> surface = plan.attributes().get(Surface.KEY);
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      structure
          .attributes()
          .get(LevelWords.SwaleLine.KEY)
          .ifPresent(s -> paint(plan, structure, s, surface, marks));
    }
    return marks;
  }

  private static void paint(
      Plan plan,
      Element.Structure at,
      LevelWords.SwaleLine s,
      Optional<Surface> surface,
      List<Mark> marks) {
    String about = at.id().toString();
    marks.add(new Mark.Region(at.shape(), Palette.SWALE, about));
    if (s.swale().bottom().metres() > 0) {
      marks.add(
          new Mark.Region(
              PathStrip.centred(s.line(), s.swale().bottom()), Palette.SWALE_BOTTOM, about));
    }
    String text = Show.capital(at.id().name());
    Optional<Length> start = surface.flatMap(g -> g.levelAt(s.line().start()));
    Optional<Length> end = surface.flatMap(g -> g.levelAt(s.line().end()));
    if (start.isPresent() && end.isPresent()) {
      Length fall = start.get().minus(end.get());
      boolean level = fall.max(fall.negative()).compareTo(LEVEL) <= 0;
      text += "\n" + note(plan, s.line(), start.get(), fall, level);
      for (double share : PLACES) {
        if (level) {
          inflow(surface.get(), s, share, about).ifPresent(marks::add);
        } else {
          marks.add(along(s.line(), share, fall.metres() > 0, about));
        }
      }
    }
    Point middle = s.line().middle();
    marks.add(new Mark.Label(middle, text, TEXT_MM, false, 1, Mark.Anchor.CENTRE));
  }

  private static String note(Plan plan, Line line, Length start, Length fall, boolean level) {
    if (level) {
      return "level at " + LevelText.of(plan, start);
    }
    return String.format(
        Locale.ROOT,
        "falls %.1f %%, %s",
        100 * Math.abs(fall.ratioTo(line.length())),
        DimensionText.of(fall.max(fall.negative()), plan.info().units()));
  }

  /** An arrow above the swale, down the slope of the ground. */
  private static Optional<Mark> inflow(
      Surface surface, LevelWords.SwaleLine s, double share, String about) {
    Point on = s.line().at(s.line().length().times(share));
    return surface
        .slopeAt(on)
        .map(Slope::downhill)
        .map(
            downhill -> {
              Length away = s.swale().top().div(2).plus(ABOVE);
              double turn = downhill.radians();
              Point up =
                  on.moved(away.times(-StrictMath.sin(turn)), away.times(-StrictMath.cos(turn)));
              return arrow(up, downhill, about);
            });
  }

  private static Mark along(Line line, double share, boolean forward, String about) {
    Length at = line.length().times(share);
    Length step = Length.millimetres(10);
    Point from = line.at(at.minus(step).max(Length.ZERO));
    Point to = line.at(at.plus(step));
    double east = to.x().minus(from.x()).metres() * (forward ? 1 : -1);
    double north = to.y().minus(from.y()).metres() * (forward ? 1 : -1);
    Angle turn = Angle.degrees(StrictMath.toDegrees(StrictMath.atan2(east, north)));
    return arrow(line.at(at), turn, about);
  }

  private static Mark arrow(Point at, Angle turn, String about) {
    return new Mark.Symbol(at, Mark.SymbolForm.ARROW, Length.ZERO, turn, Palette.FLOW, about);
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    List<Mark> marks = paint(plan, facts);
    List<LegendEntry> entries = new ArrayList<>();
    if (!marks.isEmpty()) {
      entries.add(LegendEntry.area("Swale, with its bottom", Palette.SWALE));
    }
    if (marks.stream().anyMatch(m -> m instanceof Mark.Symbol)) {
      entries.add(LegendEntry.symbol("Way of the water", Mark.SymbolForm.ARROW, Palette.FLOW));
    }
    return entries;
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
