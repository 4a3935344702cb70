package yardloom.sun.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Offers;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.recall.Piece;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.sun.bed.BedSuns;
import yardloom.sun.bed.SunTable;
import yardloom.sun.body.Shadows;
import yardloom.sun.shade.ShadeScene;
import yardloom.sun.shade.SkyLook;
import yardloom.sun.spot.SpotTable;
import yardloom.sun.spot.SunSpots;
import yardloom.sun.yard.SunField;
import yardloom.sun.yard.YardSun;

/** The sun sheet: season and months, shade, sun path, classes, best ground. */
public final class SunSheet implements SheetMaker {
  private static final Length HOUSE = Length.feet(20);

  private static final int NUMBER = 40;

  @Override
  public String id() {
    return "sun.sheet";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SunField.KEY, YardSun.KEY, BedSuns.KEY, SunSpots.KEY);
  }

  @Override
  public List<SheetPlan> make(Plan plan, Facts facts, Offers offers) {
    Optional<SunField> field = facts.find(SunField.KEY);
    if (field.isEmpty() || plan.site().isEmpty()) {
      return List.of();
    }
    Site site = plan.site().get();
    YardSun yard = facts.get(YardSun.KEY);
    List<Panel> panels = new ArrayList<>();
    panels.add(SunFigures.season(plan, field.get(), facts.find(SunSpots.KEY)));
    panels.add(SunFigures.months(plan, field.get()));
    Point at = point(plan);
    panels.add(
        Piece.of(
            "sun path",
            new Looking(site, yard, at, ownShade(plan, yard, at), place(plan, at)),
            SunSheet::sunPath));
    panels.add(new ShadowFigure(plan, site, yard.ground(), yard.standing()).make());
    panels.add(notes(facts));
    addTable(panels, new SunTable().make(plan, facts));
    addTable(panels, new SpotTable().make(plan, facts));
    offers.tables(SheetPage.SUN).forEach(table -> addTable(panels, table));
    return List.of(new SheetPlan(NUMBER, "sun", "Sun and shade", panels));
  }

  /** What the sky over a point is drawn from. */
  private record Looking(Site site, YardSun yard, Point at, int ownShade, String place) {}

  private static Panel sunPath(Looking from) {
    return SunPathFigure.of(
        from.site().latitude().radians(),
        new SkyLook(
            from.yard().scene(),
            from.site().north().radians(),
            from.at().x().metres(),
            from.at().y().metres(),
            from.ownShade()),
        from.place());
  }

  private static void addTable(List<Panel> panels, Table table) {
    if (!table.isEmpty()) {
      panels.add(new Panel.TableBlock(table));
    }
  }

  /** The point that the plan chose, else the inmost point of the first bed or of the lot. */
  private static Point point(Plan plan) {
    return plan.attributes()
        .get(SunPathWords.SUN_POINT)
        .orElseGet(
            () ->
                plan.all(Element.Bed.class).stream()
                    .findFirst()
                    .map(b -> b.shape().heart())
                    .orElseGet(() -> plan.lot().orElseThrow().shape().heart()));
  }

  /** A bed's own plants do not hide the sky over it. */
  private static int ownShade(Plan plan, YardSun yard, Point at) {
    return bedAt(plan, at).map(b -> yard.scene().shadeOf(b.id())).orElse(ShadeScene.NOBODY);
  }

  private static Optional<Element.Bed> bedAt(Plan plan, Point at) {
    return plan.all(Element.Bed.class).stream().filter(b -> b.shape().contains(at)).findFirst();
  }

  private static String place(Plan plan, Point at) {
    boolean chosen = plan.attributes().get(SunPathWords.SUN_POINT).isPresent();
    String within = bedAt(plan, at).map(b -> b.id() + ", without its own plants").orElse("");
    if (chosen) {
      return within.isEmpty() ? "the chosen point" : "the chosen point in " + within;
    }
    return within.isEmpty() ? "the middle of the lot" : within;
  }

  private static Panel notes(Facts facts) {
    List<String> lines = new ArrayList<>();
    facts.find(BedSuns.KEY).ifPresent(s -> lines.add(s.method()));
    lines.add(
        "Cloud is not counted: hours are what a clear sky would bring. Heights and crowns are as"
            + " the plan gives them; an error of 10 % in a height moves the shadow's edge by as"
            + " much.");
    lines.add(
        String.format(
            Locale.ROOT,
            "Shadow edges are soft, because the sun is half a degree wide: behind a house %s"
                + " high, about %s with the sun at 40° and %s at 15°.",
            Say.both(Measure.LENGTH, HOUSE),
            Say.both(Measure.WIDTH, edge(40)),
            Say.both(Measure.WIDTH, edge(15))));
    return new Panel.Notes("How to read the sun sheet", lines);
  }

  private static Length edge(double sunDegrees) {
    return Length.metres(Shadows.edgeWidthM(HOUSE.metres(), sunDegrees));
  }
}
