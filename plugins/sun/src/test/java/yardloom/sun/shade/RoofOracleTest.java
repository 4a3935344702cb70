package yardloom.sun.shade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleBinaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Shape;
import yardloom.sun.body.Ground;
import yardloom.sun.position.DayLength;

/**
 * Roofs, L-shaped houses and sloping ground against rays walked in steps of 2 cm under a height
 * function, written without any of the engine's geometry.
 */
class RoofOracleTest {
  private static final double STEP_M = 0.02;
  private static final int COLUMNS = 360;

  /** Hours at (x, y) under a solid that fills from {@code base} up to {@code top(x, y)}. */
  private static double walked(
      DoubleBinaryOperator ground,
      DoubleBinaryOperator base,
      DoubleBinaryOperator top,
      double highest,
      double latitude,
      double declination,
      double x,
      double y) {
    double phi = Math.toRadians(latitude);
    double delta = Math.toRadians(declination);
    int sunny = 0;
    for (int j = 0; j < COLUMNS; j++) {
      double hourAngle = ((j + 0.5) / COLUMNS * 2 - 1) * Math.PI;
      double elevation = DayLength.elevation(phi, delta, hourAngle);
      double bearing = DayLength.bearing(phi, delta, hourAngle);
      if (elevation > 0) {
        sunny += clear(ground, base, top, highest, x, y, elevation, bearing) ? 1 : 0;
      }
    }
    return sunny * 24.0 / COLUMNS;
  }

  private static boolean clear(
      DoubleBinaryOperator ground,
      DoubleBinaryOperator base,
      DoubleBinaryOperator top,
      double highest,
      double x,
      double y,
      double elevation,
      double bearing) {
    double eye = ground.applyAsDouble(x, y);
    for (double length = STEP_M; length < 60; length += STEP_M) {
      double far = length * Math.cos(elevation);
      double px = x + far * Math.sin(bearing);
      double py = y + far * Math.cos(bearing);
      double pz = eye + length * Math.sin(elevation);
      if (pz < ground.applyAsDouble(px, py)) {
        return false;
      }
      if (pz > highest) {
        return true;
      }
      if (pz >= base.applyAsDouble(px, py) && pz <= top.applyAsDouble(px, py)) {
        return false;
      }
    }
    return true;
  }

  private static double engine(
      Obstacle house, Ground ground, double latitude, double declination, double x, double y) {
    ShadeScene scene =
        new ShadeScene(
            Math.toRadians(latitude), 0, ground, java.util.List.of(), java.util.List.of(house));
    return Scenes.day(scene, declination, COLUMNS, x, y).directHours();
  }

  private static final DoubleBinaryOperator LEVEL = (x, y) -> 0;

  /** Three outlines at most two columns each. */
  private static final double TOLERANCE = 4 * 24.0 / COLUMNS;

  /**
   * The walk misses slivers thinner than its step, so it finds too much sun; under a roof made
   * thicker by a step above and below, it finds too little.
   */
  private static void assertWalked(
      Obstacle roof,
      double baseM,
      DoubleBinaryOperator top,
      double highest,
      double latitude,
      double declination,
      double x,
      double y) {
    double found = engine(roof, Ground.LEVEL, latitude, declination, x, y);
    double most = walked(LEVEL, (a, b) -> baseM, top, highest, latitude, declination, x, y);
    double least =
        walked(
            LEVEL,
            (a, b) -> baseM - STEP_M,
            (a, b) -> top.applyAsDouble(a, b) + STEP_M,
            highest + STEP_M,
            latitude,
            declination,
            x,
            y);
    assertTrue(
        found >= least - TOLERANCE && found <= most + TOLERANCE,
        () -> found + " h, walked " + least + " to " + most);
  }

  @Property(tries = 20, seed = "20261125")
  void gableRoof_equalsWalkedRays(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination,
      @ForAll @DoubleRange(min = -9, max = 9) double x,
      @ForAll @DoubleRange(min = 3.2, max = 9) double side) {
    // 8 by 6 m, ridge from west to east at 5 m, eaves at 3 m; a roof without walls floats.
    Obstacle roof = Scenes.solid(Form.GABLE, Scenes.rectangle(-4, -3, 4, 3), 3, 5);
    DoubleBinaryOperator top =
        (px, py) -> Math.abs(px) <= 4 && Math.abs(py) <= 3 ? 5 - 2 * Math.abs(py) / 3 : -1;
    for (double y : new double[] {side, -side, 0.5}) {
      assertWalked(roof, 3, top, 5, latitude, declination, x, y);
    }
  }

  @Property(tries = 20, seed = "20261125")
  void hipRoof_equalsWalkedRays(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination,
      @ForAll @DoubleRange(min = -9, max = 9) double x,
      @ForAll @DoubleRange(min = -9, max = 9) double y) {
    Obstacle roof = Scenes.solid(Form.HIP, Scenes.rectangle(-3, -5, 3, 5), 2, 5);
    DoubleBinaryOperator top =
        (px, py) -> {
          double in = Math.min(3 - Math.abs(px), 5 - Math.abs(py));
          return in >= 0 ? 2 + in : -1;
        };
    assertWalked(roof, 2, top, 5, latitude, declination, x, y);
  }

  @Property(tries = 20, seed = "20261125")
  void shedRoof_risesUpThePlan(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination,
      @ForAll @DoubleRange(min = -9, max = 9) double x,
      @ForAll @DoubleRange(min = -9, max = 9) double y) {
    Obstacle roof = Scenes.solid(Form.SHED, Scenes.rectangle(-3, -2, 3, 2), 2, 4);
    DoubleBinaryOperator top =
        (px, py) -> Math.abs(px) <= 3 && Math.abs(py) <= 2 ? 2 + 2 * (py + 2) / 4 : -1;
    assertWalked(roof, 2, top, 4, latitude, declination, x, y);
  }

  @Property(tries = 20, seed = "20261125")
  void angledHouseOnSlope_equalsWalkedRays(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -23, max = 23) double declination,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double riseX,
      @ForAll @DoubleRange(min = -0.3, max = 0.3) double riseY,
      @ForAll @DoubleRange(min = 2.2, max = 9) double x,
      @ForAll @DoubleRange(min = 2.2, max = 9) double y) {
    Shape angle = Scenes.rectangle(0, 0, 8, 2).plus(Scenes.rectangle(0, 0, 2, 8));
    Obstacle house = Scenes.solid(Form.PRISM, angle, 0, 3);
    DoubleBinaryOperator ground = (px, py) -> riseX * px + riseY * py;
    double roofM = ground.applyAsDouble(4, 4) + 3;
    DoubleBinaryOperator top =
        (px, py) -> px >= 0 && py >= 0 && px <= 8 && py <= 8 && (px <= 2 || py <= 2) ? roofM : -99;
    assertEquals(
        // The ground itself may rise above the roof, so the walk goes on for a while.
        walked(ground, (a, b) -> -98, top, roofM + 20, latitude, declination, x, y),
        engine(house, new Ground(riseX, riseY), latitude, declination, x, y),
        TOLERANCE);
  }
}
