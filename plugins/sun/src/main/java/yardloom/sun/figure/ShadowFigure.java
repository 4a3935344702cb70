package yardloom.sun.figure;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.Obstacle;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.recall.Piece;
import yardloom.sun.body.Ground;
import yardloom.sun.body.Shadows;
import yardloom.sun.position.DayLength;

/**
 * Outlines of the shade three hours before, at and three hours after solar noon, on the equinoxes
 * and solstices. Where nothing can be drawn because the sun is down or too low, the tile says so.
 */
final class ShadowFigure {
  private static final double[] HOURS = {-3, 0, 3};
  private static final String[] TIMES = {"−3 h", "noon", "+3 h"};
  private static final String[] DAYS = {"21 March", "21 June", "21 Dec"};

  /** January is 0. */
  private static final int[] MONTHS = {2, 5, 11};

  private static final double[] DECLINATION_DEG = {0, 23.44, -23.44};
  private static final double WIDTH_MM = 95;
  private static final double ROW_MM = 250;
  private static final Style SHADE =
      Style.filled("sun-shade", "#b4bccb").hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.25);

  private final Plan plan;
  private final Site site;
  private final Ground ground;
  private final List<Obstacle> obstacles;
  private final YardOutline yard;
  private final double widthMm;

  ShadowFigure(Plan plan, Site site, Ground ground, List<Obstacle> obstacles) {
    this.plan = plan;
    this.site = site;
    this.ground = ground;
    this.obstacles = obstacles;
    boolean tall = YardOutline.isTall(plan);
    widthMm = tall ? ROW_MM : WIDTH_MM;
    yard = new YardOutline(plan, widthMm, tall ? DAYS.length * HOURS.length : HOURS.length);
  }

  Panel.Figure make() {
    List<Cast> casts = new ArrayList<>();
    for (int day = 0; day < DAYS.length; day++) {
      List<Obstacle> there = there(MONTHS[day]);
      for (double hour : HOURS) {
        casts.add(new Cast(at(DECLINATION_DEG[day], hour), there, yard.ground()));
      }
    }
    List<Shape> shades =
        Piece.of("shades", casts, all -> all.parallelStream().map(Cast::shade).toList());
    List<Mark> marks = new ArrayList<>();
    for (int day = 0; day < DAYS.length; day++) {
      for (int h = 0; h < HOURS.length; h++) {
        int tile = day * HOURS.length + h;
        double right = yard.rightM(tile);
        double up = yard.upM(tile);
        Shape shade = shades.get(tile);
        if (!shade.isEmpty()) {
          marks.add(
              new Mark.Region(HourBands.moved(shade, right, up), SHADE, "shade, " + TIMES[h]));
        }
        String caption =
            DAYS[day] + ", " + TIMES[h] + (casts.get(tile).shadows().isDay() ? "" : ": sun down");
        marks.addAll(yard.marks(caption, right, up));
      }
    }
    marks.addAll(yard.northAndBar(YardOutline.isTall(plan) ? 1 : DAYS.length));
    List<LegendEntry> legend =
        List.of(
            LegendEntry.area("shade at that time, of what grows then; crowns as if solid", SHADE));
    return new Panel.Figure(
        "Shade three hours before, at and three hours after solar noon", marks, legend, widthMm, 0);
  }

  /** What the shade of a moment is made of. */
  private record Cast(Shadows shadows, List<Obstacle> obstacles, Shape ground) {
    Shape shade() {
      return shadows.of(obstacles).and(ground);
    }
  }

  /** What is there in a month; of a crop that is not, all light passes. */
  private List<Obstacle> there(int month) {
    return obstacles.stream().filter(o -> o.passes().get(month) < 1).toList();
  }

  private Shadows at(double declinationDeg, double hour) {
    double latitude = site.latitude().radians();
    double declination = StrictMath.toRadians(declinationDeg);
    double hourAngle = StrictMath.toRadians(15 * hour);
    return new Shadows(
        ground,
        DayLength.bearing(latitude, declination, hourAngle),
        DayLength.elevation(latitude, declination, hourAngle),
        site.north().radians());
  }
}
