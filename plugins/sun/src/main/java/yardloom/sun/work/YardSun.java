package yardloom.sun.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Stage;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.sun.calc.DayGroups;
import yardloom.sun.calc.Ground;
import yardloom.sun.calc.ShadeScene;
import yardloom.sun.calc.SunEngine;
import yardloom.sun.calc.SunYear;
import yardloom.sun.model.Grid;
import yardloom.sun.model.SunKeys;
import yardloom.sun.model.SunSettings;

/** A plan's scene, engine and grid, made once from its site, settings and obstacles. */
final class YardSun {
  /** One column of hour angle every two minutes. */
  static final int COLUMNS = 720;

  /** Above this many cells the cells are made larger. */
  static final int MOST_CELLS = 60_000;

  final SunSettings settings;
  final ShadeScene scene;
  final SunYear year;
  final SunEngine engine;
  final DayGroups groups;
  final int[] meanDays;

  YardSun(Plan plan, Site site, List<Obstacle> obstacles) {
    settings = SunSettings.of(plan);
    year = new SunYear(site.longitude().degrees());
    double north = site.north().radians();
    Ground ground =
        settings
            .fall()
            .map(f -> Ground.falling(f.slope(), f.towards().radians(), north))
            .orElse(Ground.LEVEL);
    scene =
        new ShadeScene(
            site.latitude().radians(), north, ground, skyline(settings), standing(obstacles));
    engine = new SunEngine(scene, year, COLUMNS);
    groups = DayGroups.season(settings.season().from(), settings.season().to());
    meanDays = SunYear.MEAN_DAYS.stream().mapToInt(SunYear::day).toArray();
  }

  private static List<double[]> skyline(SunSettings settings) {
    List<double[]> points = new ArrayList<>();
    settings
        .skyline()
        .forEach(s -> points.add(new double[] {s.bearing().radians(), s.rise().radians()}));
    return points;
  }

  private List<Obstacle> standing(List<Obstacle> obstacles) {
    return obstacles.stream()
        .filter(o -> o.stage() == Stage.STANDING || o.stage() == settings.stage())
        .toList();
  }

  SunEngine.Looker looker() {
    return engine.looker(groups, meanDays);
  }

  /** Cells over the lot and all beds; empty if the plan has neither. */
  Optional<Grid> grid(Plan plan) {
    Envelope bounds = new Envelope();
    plan.lot().ifPresent(lot -> bounds.expandToInclude(lot.shape().bounds()));
    plan.all(Element.Bed.class).forEach(b -> bounds.expandToInclude(b.shape().bounds()));
    if (bounds.isNull() || bounds.getArea() == 0) {
      return Optional.empty();
    }
    double cellM = settings.cell().metres();
    while (cells(bounds, cellM) > MOST_CELLS) {
      cellM *= 2;
    }
    return Optional.of(
        new Grid(
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
  static double soilM(Element.Bed bed) {
    return bed.attributes().get(SunKeys.BED_HEIGHT).map(h -> h.metres()).orElse(0.0);
  }

  static Point heart(Element.Bed bed) {
    return bed.shape().heart();
  }
}
