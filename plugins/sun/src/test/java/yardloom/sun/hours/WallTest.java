package yardloom.sun.hours;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.sun.shade.Scenes;
import yardloom.sun.shade.ShadeScene;

/** Sun hours beside long walls against closed forms: rows E10 to E14 of the published checks. */
class WallTest {
  private static final OutsideRows ROWS =
      OutsideRows.of(WallTest.class, "/yardloom/sun/sun-checks.csv");
  private static final int MINUTE = 1440;

  @ParameterizedTest(name = "{0}: latitude {1}, declination {2}, {4} m north of 2 m wall: {5} h")
  @CsvSource({
    // E10: the shadow of the equinox sun ends at H·tan φ = 1.678 m, all day
    "E10, 40, 0, 2, 1.6, 0, 0.05",
    "E10, 40, 0, 2, 1.7, 12, 0.05",
    // E11, E12: numeric, 200 000 steps
    "E11, 40, -23.44, 2, 4.0, 0.00, 0.05",
    "E11, 40, -23.44, 2, 4.5, 3.66, 0.05",
    "E12, 40, 23.44, 2, 0.5, 11.23, 0.05",
    "E12, 40, 23.44, 2, 2.0, 14.84, 0.05"
  })
  void sunNorthOfEastWestWall_equalsPublished(
      String id,
      double latitude,
      double declination,
      double h,
      double d,
      double hours,
      double tol) {
    ShadeScene scene = Scenes.scene(latitude, Scenes.box(-1e5, -0.01, 1e5, 0, h));
    ROWS.check(
        id, d + " m", hours, Scenes.day(scene, declination, MINUTE, 0, d).directHours(), tol);
  }

  @ParameterizedTest(name = "{0}: latitude {1}, H/d = {2}: {3} h")
  @CsvSource({
    // 6 + (1/15)·atan(cos φ · d/H)
    "E13, 40, 0.5, 9.791",
    "E13, 40, 1, 8.497",
    "E13, 40, 2, 7.397",
    "E14, 0, 1, 9.000",
    "E14, 50, 1, 8.182"
  })
  void sunEastOfNorthSouthWallAtEquinox_equalsClosedForm(
      String id, double latitude, double heightToDistance, double hours) {
    ShadeScene scene =
        Scenes.scene(latitude, Scenes.box(-0.01, -1e5, 0, 1e5, 2 * heightToDistance));
    ROWS.check(
        id,
        "latitude " + latitude + ", H/d " + heightToDistance,
        hours,
        Scenes.day(scene, 0, MINUTE, 2, 0).directHours(),
        0.02);
  }
}
