package yardloom.sun.yard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Stage;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.sun.body.Ground;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.DayGroups;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.light.formula.ClearSkyHour;
import yardloom.sun.light.formula.LightOfDays;
import yardloom.sun.position.DayLength;
import yardloom.sun.position.SunYear;
import yardloom.sun.shade.ShadeScene;

/** A plan's scene, engine and grid, made once from its site, settings and obstacles. */
public final class YardSun {
  /** The plan's scene as it is meant to be, all that is proposed included. */
  public static final FactKey<YardSun> KEY =
      FactKey.one("sun.scene", YardSun.class).called("scene of what casts shade");

  /** One column of hour angle every four minutes. */
  public static final int COLUMNS = 360;

  /** Above this many cells the cells are made larger. */
  static final int MOST_CELLS = 60_000;

  /** The same where the plan says no size: the means of beds are as good, the map is coarser. */
  static final int MOST_CELLS_UNASKED = 16_000;

  private static final double SURVEY_M = 0.5;

  public final SunSettings settings;
  public final ShadeScene scene;
  private final Ground ground;
  private final List<Obstacle> standing;
  public final SunYear year;
  public final SunEngine engine;
  public final DayGroups groups;
  public final int[] meanDays;
  private final Optional<LightOfDays> light;
  private final Site site;

  /**
   * A yard.
   *
   * @param radiation of the sky, for daily light; without it no light is worked out
   */
  public YardSun(
      Plan plan, Site site, List<Obstacle> obstacles, Optional<SolarRadiation> radiation) {
    settings = SunSettings.of(plan);
    year = new SunYear(site.longitude().degrees());
    double north = site.north().radians();
    this.site = site;
    ground =
        settings
            .fall()
            .map(f -> Ground.falling(f.slope(), f.towards().radians(), north))
            .or(() -> plan.attributes().get(Surface.KEY).map(s -> surveyed(plan, s)))
            .orElse(Ground.LEVEL);
    standing = grown(obstacles);
    scene = new ShadeScene(site.latitude().radians(), north, ground, skyline(settings), standing);
    engine = new SunEngine(scene, year, COLUMNS);
    groups = DayGroups.season(settings.season().from(), settings.season().to());
    meanDays = SunYear.MEAN_DAYS.stream().mapToInt(SunYear::day).toArray();
    light = light(site, radiation);
  }

  /** The plane nearest to the open ground of the lot, where levels are known. */
  private static Ground surveyed(Plan plan, Surface surface) {
    List<Shape> built = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> built.add(b.shape()));
    Shape lot = plan.lot().map(l -> l.shape()).orElseGet(surface::extent);
    Shape open = lot.and(surface.extent()).minus(Shape.union(built));
    Predicate<Point> inside = open.insideTest();
    Envelope box = open.bounds();
    List<double[]> levels = new ArrayList<>();
    for (double x = box.getMinX() + SURVEY_M / 2; x < box.getMaxX(); x += SURVEY_M) {
      for (double y = box.getMinY() + SURVEY_M / 2; y < box.getMaxY(); y += SURVEY_M) {
        Point at = Point.metres(x, y);
        if (inside.test(at)) {
          double[] level = {x, y, 0};
          surface
              .levelAt(at)
              .ifPresent(
                  z -> {
                    level[2] = z.metres();
                    levels.add(level);
                  });
        }
      }
    }
    return Ground.nearest(levels);
  }

  private Optional<LightOfDays> light(Site site, Optional<SolarRadiation> radiation) {
    return radiation.map(r -> light(site.latitude().radians(), r));
  }

  private LightOfDays light(double latitudeRad, SolarRadiation radiation) {
    List<ClearSkyHour> skies =
        radiation.skies().stream()
            .map(s -> new ClearSkyHour(s.normalMjPerHour(), s.pressureKpa(), s.waterMm()))
            .toList();
    LightOfDays clear = new LightOfDays(skies, latitudeRad, year, COLUMNS, meanDays);
    return radiation
        .given()
        .map(
            g ->
                clear.measured(
                    array(g.monthly()), array(radiation.extraterrestrial()), sunsets(latitudeRad)))
        .orElse(clear);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(v -> v).toArray();
  }

  private double[] sunsets(double latitudeRad) {
    return Arrays.stream(meanDays)
        .mapToDouble(d -> DayLength.sunsetHourAngle(latitudeRad, StrictMath.atan(year.tan(d))))
        .toArray();
  }

  private static List<double[]> skyline(SunSettings settings) {
    List<double[]> points = new ArrayList<>();
    settings
        .skyline()
        .forEach(s -> points.add(new double[] {s.bearing().radians(), s.rise().radians()}));
    return points;
  }

  /** What casts shade. */
  public ShadeScene scene() {
    return scene;
  }

  /** The obstacles that stand at the chosen state of growth. */
  public List<Obstacle> standing() {
    return standing;
  }

  public Ground ground() {
    return ground;
  }

  /**
   * What casts other shade than in {@code before}, or did and is gone; empty if more than that has
   * changed, or what else casts shade stands in another order.
   */
  Optional<Set<ElementId>> changedSince(YardSun before) {
    if (before == this) {
      return Optional.of(Set.of());
    }
    boolean sameSky =
        site.latitude().equals(before.site.latitude())
            && site.longitude().equals(before.site.longitude())
            && site.north().equals(before.site.north())
            && ground.equals(before.ground)
            && settings.equals(before.settings);
    if (!sameSky) {
      return Optional.empty();
    }
    Set<ElementId> changed = new TreeSet<>();
    Map<ElementId, List<Obstacle>> was = byElement(before.standing);
    Map<ElementId, List<Obstacle>> is = byElement(standing);
    was.forEach((id, all) -> addUnlessSame(changed, id, all, is.get(id)));
    is.forEach((id, all) -> addUnlessSame(changed, id, all, was.get(id)));
    return without(changed, standing).equals(without(changed, before.standing))
        ? Optional.of(changed)
        : Optional.empty();
  }

  private static void addUnlessSame(
      Set<ElementId> changed, ElementId id, List<Obstacle> some, List<Obstacle> others) {
    if (!some.equals(others)) {
      changed.add(id);
    }
  }

  private static Map<ElementId, List<Obstacle>> byElement(List<Obstacle> obstacles) {
    return obstacles.stream()
        .collect(Collectors.groupingBy(Obstacle::of, TreeMap::new, Collectors.toList()));
  }

  private static List<Obstacle> without(Set<ElementId> some, List<Obstacle> obstacles) {
    return obstacles.stream().filter(o -> !some.contains(o.of())).toList();
  }

  private List<Obstacle> grown(List<Obstacle> obstacles) {
    return obstacles.stream()
        .filter(o -> o.stage() == Stage.STANDING || o.stage() == settings.stage())
        .toList();
  }

  public SunEngine.Looker looker() {
    return engine.looker(groups, meanDays);
  }

  /** Daily light by month at the place a looker is turned to; empty where radiation is unknown. */
  public List<LightOfDays.Arriving> dailyLight(SunEngine.Looker looker, double[] skyView) {
    return light.map(l -> l.arriving(looker, skyView)).orElse(List.of());
  }

  /** Cells over the lot and all beds; empty if the plan has neither. */
  public Optional<CellGrid> grid(Plan plan) {
    Envelope bounds = new Envelope();
    plan.lot().ifPresent(lot -> bounds.expandToInclude(lot.shape().bounds()));
    plan.all(Element.Bed.class).forEach(b -> bounds.expandToInclude(b.shape().bounds()));
    if (bounds.isNull() || bounds.getArea() == 0) {
      return Optional.empty();
    }
    double cellM = settings.cell().metres();
    int most = plan.attributes().get(YardWords.CELL).isPresent() ? MOST_CELLS : MOST_CELLS_UNASKED;
    while (cells(bounds, cellM) > most) {
      cellM *= 2;
    }
    return Optional.of(
        new CellGrid(
            bounds.getMinX(),
            bounds.getMinY(),
            cellM,
            (int) Math.ceil(bounds.getWidth() / cellM - 1e-9),
            (int) Math.ceil(bounds.getHeight() / cellM - 1e-9)));
  }

  private static double cells(Envelope bounds, double cellM) {
    return Math.ceil(bounds.getWidth() / cellM) * Math.ceil(bounds.getHeight() / cellM);
  }

  /** How high the soil of a bed lies above the ground. */
  public static double soilM(Element.Bed bed) {
    return bed.attributes().get(YardWords.BED_HEIGHT).map(h -> h.metres()).orElse(0.0);
  }
}
