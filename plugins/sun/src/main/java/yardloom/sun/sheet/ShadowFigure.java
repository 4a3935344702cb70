package yardloom.sun.sheet;

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
import yardloom.sun.calc.DayLength;
import yardloom.sun.calc.Ground;
import yardloom.sun.calc.Shadows;

/** Outlines of the shade three hours before, at and three hours after solar noon. */
final class ShadowFigure {
  private static final double[] HOURS = {-3, 0, 3};
  private static final String[] TIMES = {
    "9 h solar time (3 h before noon)", "solar noon", "15 h solar time (3 h after noon)"
  };
  private static final Style[] STYLES = {
    style("sun-shade-morning", Hatch.DIAGONAL, "3 1"),
    style("sun-shade-noon", Hatch.VERTICAL, ""),
    style("sun-shade-afternoon", Hatch.DIAGONAL_BACK, "0.8 0.8")
  };
  private static final String[] DAYS = {"21 March, 23 September", "21 June", "21 December"};
  private static final double[] DECLINATION_DEG = {0, 23.44, -23.44};
  private static final double WIDTH_MM = 200;

  private ShadowFigure() {}

  private static Style style(String name, Hatch hatch, String dash) {
    return new Style(name, "", hatch, Palette.INK, 0.25, dash);
  }

  static Panel.Figure of(Plan plan, Site site, Ground ground, List<Obstacle> obstacles) {
    YardOutline yard = new YardOutline(plan);
    List<Mark> marks = new ArrayList<>();
    double latitude = site.latitude().radians();
    for (int day = 0; day < DAYS.length; day++) {
      double right = yard.rightM(day, DAYS.length);
      double declination = StrictMath.toRadians(DECLINATION_DEG[day]);
      for (int h = 0; h < HOURS.length; h++) {
        double hourAngle = StrictMath.toRadians(15 * HOURS[h]);
        Shape shade =
            new Shadows(
                    ground,
                    DayLength.bearing(latitude, declination, hourAngle),
                    DayLength.elevation(latitude, declination, hourAngle),
                    site.north().radians())
                .of(obstacles)
                .and(yard.ground());
        if (!shade.isEmpty()) {
          marks.add(
              new Mark.Region(HourBands.moved(shade, right, 0), STYLES[h], "shade, " + TIMES[h]));
        }
      }
      marks.addAll(yard.marks(DAYS[day], right, 0));
    }
    List<LegendEntry> legend = new ArrayList<>();
    for (int h = 0; h < HOURS.length; h++) {
      legend.add(LegendEntry.area("shade at " + TIMES[h], STYLES[h]));
    }
    return new Panel.Figure(
        "Shade on equinox and solstices (crowns as if solid)", marks, legend, WIDTH_MM, 0);
  }
}
