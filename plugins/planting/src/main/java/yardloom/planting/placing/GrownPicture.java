package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant.Form;

/** Plants of beds as they look grown: discs of their spread, lit from the upper left. */
public final class GrownPicture implements Painter {
  private static final double LIT = 0.55;
  private static final double LIT_BY = 0.22;
  private static final double LEAST_SPREAD_M = 0.12;
  private static final Map<Form, Style> STYLES = new EnumMap<>(Form.class);
  private static final Map<Form, Style> LIGHTS = new EnumMap<>(Form.class);

  static {
    style(Form.HERB, "#86b36a", "#4a7436", "#a9d08c");
    style(Form.ANNUAL, "#c3cf5c", "#7f8a24", "#dde68c");
    style(Form.SHRUB, "#5f9457", "#315a2c", "#82b478");
    style(Form.VINE, "#9a8fc4", "#574c86", "#bab1dc");
    style(Form.TREE, "#7fa862", "#3f6130", "#9cc47d");
  }

  private static void style(Form form, String fill, String edge, String light) {
    String name = "picture-" + form.name().toLowerCase(java.util.Locale.ROOT);
    STYLES.put(form, Style.filled(name, fill).outlined(edge, 0.18));
    LIGHTS.put(form, Style.filled(name + "-light", light));
  }

  @Override
  public Layer layer() {
    return new Layer("planting.picture", "Picture: plants", Layer.Band.PLANTS);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.COVER);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (Planting p : facts.get(PlantPlaces.KEY).drawn()) {
      if (p.plant().growth().start().isInDrills()) {
        p.drills().stream().filter(d -> d.size() > 1).forEach(d -> marks.add(row(p, d)));
      } else {
        p.at().forEach(at -> disc(p, at, marks));
      }
    }
    return marks;
  }

  private static Mark row(Planting p, List<Point> drill) {
    Line line = Line.between(drill.get(0), drill.get(drill.size() - 1));
    return new Mark.Region(
        line.strip(Length.metres(LEAST_SPREAD_M)),
        STYLES.get(p.plant().growth().form()),
        p.plant().name());
  }

  private static void disc(Planting p, Point at, List<Mark> marks) {
    double radius = Math.max(LEAST_SPREAD_M, p.plant().size().spread().middle().metres()) / 2;
    String about = p.plant().name();
    marks.add(
        new Mark.Region(
            Shape.circle(at, Length.metres(radius)), STYLES.get(p.plant().growth().form()), about));
    Point lit = at.moved(Length.metres(-LIT_BY * radius), Length.metres(LIT_BY * radius));
    marks.add(
        new Mark.Region(
            Shape.circle(lit, Length.metres(LIT * radius)),
            LIGHTS.get(p.plant().growth().form()),
            about));
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    Set<Form> drawn = EnumSet.noneOf(Form.class);
    for (Planting p : facts.get(PlantPlaces.KEY).drawn()) {
      if (!p.at().isEmpty()) {
        drawn.add(p.plant().growth().form());
      }
    }
    return drawn.stream().map(f -> LegendEntry.area(words(f), STYLES.get(f))).toList();
  }

  private static String words(Form form) {
    return switch (form) {
      case HERB -> "Perennials";
      case ANNUAL -> "Annuals";
      case SHRUB -> "Shrubs and canes";
      case VINE -> "Vines";
      case TREE -> "Fruit trees";
    };
  }
}
