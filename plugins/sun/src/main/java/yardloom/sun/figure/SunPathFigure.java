package yardloom.sun.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.kernel.draw.Mark.SymbolForm;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.sun.position.DayLength;
import yardloom.sun.shade.SkyLook;

/**
 * The sky over one point, north up: the zenith in the middle, the horizon as the rim, elevation
 * even along the radius; the sun's paths by solar hour and what hides them.
 */
final class SunPathFigure {
  private static final double RIM_M = 10;
  private static final double STEP_DEG = 1.5;

  /** Sectors overlap by a hair, so that no seam is left between them. */
  private static final double LAP_DEG = 0.01;

  private static final double WIDTH_MM = 85;
  private static final Style RING = Style.line("sky-ring", Palette.RULE, 0.18);
  private static final Style RIM = Style.line("sky-rim", Palette.INK, 0.35);
  private static final Style HIDDEN =
      Style.filled("sky-hidden", "#c9ccd1").hatched(Hatch.DIAGONAL).outlined(Palette.MUTED, 0.18);
  private static final Style DOT = Style.filled("sky-hour", Palette.INK);
  private static final String[] DAYS = {"21 June", "21 March and 23 September", "21 December"};
  private static final double[] DECLINATION_DEG = {23.44, 0, -23.44};
  private static final Style[] PATHS = {
    Style.line("sky-path-june", Palette.INK, 0.5),
    Style.line("sky-path-equinox", Palette.INK, 0.5).dashed("3 1"),
    Style.line("sky-path-december", Palette.INK, 0.5).dashed("0.8 0.8")
  };

  private SunPathFigure() {}

  static Panel.Figure of(double latitudeRad, SkyLook look, String place) {
    List<Mark> marks = new ArrayList<>();
    Shape hidden = hidden(look);
    if (!hidden.isEmpty()) {
      marks.add(new Mark.Region(hidden, HIDDEN, "sky hidden by obstacles"));
    }
    for (int elevation = 0; elevation < 90; elevation += 30) {
      Shape ring = Shape.circle(Point.metres(0, 0), Length.metres(radiusM(elevation)));
      marks.add(new Mark.Region(ring, elevation == 0 ? RIM : RING, elevation + "° up"));
      if (elevation > 0) {
        marks.add(label(at(15, elevation), elevation + "°", 2));
      }
    }
    String[] compass = {"N", "E", "S", "W"};
    for (int i = 0; i < 4; i++) {
      marks.add(label(at(90 * i, -6), compass[i], 3));
    }
    List<LegendEntry> legend = new ArrayList<>();
    for (int d = 0; d < DAYS.length; d++) {
      path(marks, latitudeRad, StrictMath.toRadians(DECLINATION_DEG[d]), d);
      legend.add(LegendEntry.line("the sun on " + DAYS[d], PATHS[d]));
    }
    legend.add(LegendEntry.symbol("full hours of solar time", SymbolForm.DOT, DOT));
    legend.add(LegendEntry.area("hidden by buildings, trees or hills", HIDDEN));
    return new Panel.Figure("Sun path at " + place, marks, legend, WIDTH_MM, 0);
  }

  private static double radiusM(double elevationDeg) {
    return RIM_M * (90 - elevationDeg) / 90;
  }

  private static Point at(double bearingDeg, double elevationDeg) {
    double bearing = StrictMath.toRadians(bearingDeg);
    double radius = radiusM(elevationDeg);
    return Point.metres(radius * StrictMath.sin(bearing), radius * StrictMath.cos(bearing));
  }

  private static Mark label(Point at, String text, double heightMm) {
    return new Mark.Label(at, text, heightMm, heightMm > 2, 2, Anchor.CENTRE);
  }

  private static void path(List<Mark> marks, double latitude, double declination, int day) {
    List<Point> points = new ArrayList<>();
    double half = DayLength.sunsetHourAngle(latitude, declination);
    if (half == 0) {
      return;
    }
    int steps = 60;
    for (int i = 0; i <= steps; i++) {
      points.add(sun(latitude, declination, half * (2.0 * i / steps - 1)));
    }
    marks.add(new Mark.Stroke(Line.through(points), PATHS[day], "the sun on " + DAYS[day]));
    for (int hour = -11; hour <= 12; hour++) {
      double hourAngle = StrictMath.toRadians(15 * hour);
      if (Math.abs(hourAngle) <= half) {
        Point at = sun(latitude, declination, hourAngle);
        String text = String.format(Locale.ROOT, "%d h", hour + 12);
        marks.add(
            new Mark.Symbol(
                at, SymbolForm.DOT, Length.ZERO, Angle.ZERO, DOT, DAYS[day] + ", " + text));
        if (day != 1 && hour % 3 == 0) {
          marks.add(new Mark.Label(at, text, 2.5, false, 4, Anchor.NEAR));
        }
      }
    }
  }

  private static Point sun(double latitude, double declination, double hourAngle) {
    return at(
        StrictMath.toDegrees(DayLength.bearing(latitude, declination, hourAngle)),
        StrictMath.toDegrees(DayLength.elevation(latitude, declination, hourAngle)));
  }

  private static Shape hidden(SkyLook look) {
    List<Shape> sectors = new ArrayList<>();
    for (double bearing = 0; bearing < 360; bearing += STEP_DEG) {
      double middle = StrictMath.toRadians(bearing + STEP_DEG / 2);
      for (double[] stretch : look.hidden(middle, StrictMath.toRadians(STEP_DEG))) {
        double low = StrictMath.toDegrees(stretch[0]);
        double high = Math.min(89.9, StrictMath.toDegrees(stretch[1]));
        sectors.add(
            Shape.polygon(
                List.of(
                    at(bearing - LAP_DEG, low),
                    at(bearing - LAP_DEG, high),
                    at(bearing + STEP_DEG + LAP_DEG, high),
                    at(bearing + STEP_DEG + LAP_DEG, low))));
      }
    }
    return Shape.union(sectors);
  }
}
