package yardloom.sun.shade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.sun.body.Ground;
import yardloom.sun.hours.DayGroups;
import yardloom.sun.hours.DayLight;
import yardloom.sun.hours.SunEngine;
import yardloom.sun.position.DayLength;
import yardloom.sun.position.SunYear;

/** Distant skyline, turned plans, raised soil. */
class HorizonTest {
  private static final int COLUMNS = 1440;

  private static double rad(double degrees) {
    return Math.toRadians(degrees);
  }

  /** An even rim of r: sun while sin e > sin r, cos H = (sin r - sin φ sin δ) / (cos φ cos δ). */
  @Property(tries = 80, seed = "20261125")
  void evenRim_leavesTheHoursAboveIt(
      @ForAll @DoubleRange(min = -65, max = 65) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination,
      @ForAll @DoubleRange(min = 0, max = 30) double rise) {
    ShadeScene scene =
        new ShadeScene(
            rad(latitude),
            0,
            Ground.LEVEL,
            List.of(new double[] {0, rad(rise)}, new double[] {Math.PI, rad(rise)}),
            List.of());
    double cosine =
        (Math.sin(rad(rise)) - Math.sin(rad(latitude)) * Math.sin(rad(declination)))
            / (Math.cos(rad(latitude)) * Math.cos(rad(declination)));
    double expected = 24 / Math.PI * Math.acos(Math.max(-1, Math.min(1, cosine)));
    // Pieces of great circle stand up to 0.03° above the even rim; slow near grazing.
    double grazing =
        24.0 / COLUMNS + 0.03 / 15 * 2 / Math.max(0.05, Math.sqrt(1 - cosine * cosine));
    if (Math.abs(cosine) < 0.98) {
      assertEquals(
          expected,
          Scenes.day(scene, declination, COLUMNS, 0, 0).directHours(),
          2 * grazing / Math.cos(rad(latitude)));
    }
  }

  @Test
  void hillInTheEast_delaysTheMorningOnly() {
    ShadeScene scene =
        new ShadeScene(
            rad(40),
            0,
            Ground.LEVEL,
            List.of(
                new double[] {rad(44), 0},
                new double[] {rad(45), rad(15)},
                new double[] {rad(135), rad(15)},
                new double[] {rad(136), 0}),
            List.of());
    DayLight day = Scenes.day(scene, 0, COLUMNS, 0, 0);
    // The equinox sun stands 15° high at sin H = ... cos H = sin 15° / cos 40°: 1.318 h after rise.
    double delay = Math.toDegrees(Math.asin(Math.sin(rad(15)) / Math.cos(rad(40)))) / 15;
    assertEquals(-6 + delay, day.firstHour(), 0.02);
    assertEquals(6, day.lastHour(), 0.02);
    assertEquals(12 - delay, day.longestHours(), 0.03);
  }

  /** A wall to the true south stays so when the sheet is turned. */
  @Property(tries = 40, seed = "20261125")
  void turnedPlan_seesTheSameSun(@ForAll @DoubleRange(min = 0, max = 360) double north) {
    double n = rad(north);
    // On the plan true south lies at bearing north + 180°.
    yardloom.kernel.geom.Shape wall =
        Scenes.rectangle(-30, -3, 30, -2)
            .turned(
                yardloom.kernel.unit.Angle.radians(-n), yardloom.kernel.geom.Point.metres(0, 0));
    ShadeScene turned =
        new ShadeScene(
            rad(40),
            n,
            Ground.LEVEL,
            List.of(),
            List.of(Scenes.solid(yardloom.facts.Obstacle.Form.PRISM, wall, 0, 2)));
    ShadeScene straight = Scenes.scene(40, Scenes.box(-30, -3, 30, -2, 2));
    assertEquals(
        Scenes.day(straight, -20, COLUMNS, 0, 0).directHours(),
        Scenes.day(turned, -20, COLUMNS, 0, 0).directHours(),
        0.04);
  }

  @Test
  void raisedSoil_seesOverALowWall() {
    SunYear year = new SunYear(0);
    SunEngine engine =
        new SunEngine(Scenes.scene(40, Scenes.box(-500, -1, 500, -0.9, 0.5)), year, 288);
    SunEngine.Looker looker =
        engine.looker(
            DayGroups.season(java.time.MonthDay.of(4, 1), java.time.MonthDay.of(9, 30)), 354);
    looker.at(0, 0, 0, ShadeScene.NOBODY);
    double low = looker.day(0).directHours();
    looker.at(0, 0, 0.6, ShadeScene.NOBODY);
    double raised = looker.day(0).directHours();
    assertEquals(9.155, raised, 0.1, "C26: all of the shortest day at 40°");
    assertTrue(low < raised - 1, low + " of " + raised);
  }

  /** Ground that falls north at 30° has no sun when the noon sun stands lower than that. */
  @Test
  void steepNorthSlope_hasNoWinterSun() {
    Ground slope = Ground.falling(Math.tan(rad(30)), 0, 0);
    ShadeScene scene = new ShadeScene(rad(40), 0, slope, List.of(), List.of());
    assertEquals(0, Scenes.day(scene, -23.44, COLUMNS, 0, 0).directHours(), 0, "noon at 26.56°");
    ShadeScene south =
        new ShadeScene(
            rad(40), 0, Ground.falling(Math.tan(rad(30)), Math.PI, 0), List.of(), List.of());
    // A south slope of 30° at 40° sees the sun as level ground at 10° does, within its own day.
    double expected =
        Math.min(
            24 / Math.PI * DayLength.sunsetHourAngle(rad(10), rad(20)),
            24 / Math.PI * DayLength.sunsetHourAngle(rad(40), rad(20)));
    assertEquals(expected, Scenes.day(south, 20, COLUMNS, 0, 0).directHours(), 0.03);
  }

  /** Levels on an exact plane give that plane; points on one line say nothing across it. */
  @Test
  void planeNearestToLevels_isTheirPlane() {
    List<double[]> levels = new ArrayList<>();
    for (int x = 0; x < 5; x++) {
      for (int y = 0; y < 3; y++) {
        levels.add(new double[] {x, y, 60 - 0.15 * x + 0.02 * y});
      }
    }
    Ground ground = Ground.nearest(levels);
    assertEquals(-0.15, ground.riseX(), 1e-12);
    assertEquals(0.02, ground.riseY(), 1e-12);
    assertEquals(Math.hypot(0.15, 0.02), ground.steepest(), 1e-12);
    assertEquals(
        90 + Math.toDegrees(Math.atan2(0.02, 0.15)),
        Math.toDegrees(ground.fallsTowardsRad(0)),
        1e-9);
    assertEquals(
        Ground.LEVEL,
        Ground.nearest(
            List.of(new double[] {0, 0, 1}, new double[] {1, 1, 2}, new double[] {2, 2, 3})));
  }
}
