package yardloom.sun.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.outside.OutsideRows;
import yardloom.sun.position.DayLength;
import yardloom.sun.shade.Scenes;

/** Shadow outlines against closed forms: rows E05 to E09. */
class ShadowsTest {
  private static final OutsideRows ROWS =
      OutsideRows.of(ShadowsTest.class, "/yardloom/sun/sun-checks.csv");
  private static final double POST_M = 0.002;

  private static Shape shadow(Obstacle of, double bearing, double elevation) {
    return new Shadows(Ground.LEVEL, Math.toRadians(bearing), Math.toRadians(elevation), 0)
        .of(List.of(of));
  }

  private static Obstacle post(double heightM) {
    return Scenes.box(-POST_M / 2, -POST_M / 2, POST_M / 2, POST_M / 2, heightM);
  }

  @ParameterizedTest(name = "E05: {0} m at {1}°: {2} m")
  @CsvSource({"1.5, 45, 1.500", "2, 30, 3.464", "2, 60, 1.155"})
  void lengthOfShadow_isHeightOverTangent(double height, double elevation, double length) {
    Envelope box = shadow(post(height), 180, elevation).bounds();
    ROWS.check("E05", height + " m at " + elevation + "°", length, box.getMaxY(), 0.001 + POST_M);
    assertEquals(0, box.getMinY(), POST_M);
  }

  /** E06: a 6 ft post at the sun of the NREL example. */
  @Test
  void tipOfShadow_liesAwayFromTheSun() {
    Envelope box = shadow(post(1.8288), 194.340241, 39.888378).bounds();
    ROWS.check("E06", "east", 0.542, box.getMaxX(), 0.001 + POST_M);
    ROWS.check("E06", "north", 2.120, box.getMaxY(), 0.001 + POST_M);
  }

  /** E07, E08: noon shadow of a 2 m fence on the solstices. */
  @ParameterizedTest(name = "{0}: latitude {1}, declination {2}: {3} m")
  @CsvSource({
    "E07, 30, -23.44, 2.697",
    "E07, 40, -23.44, 4.001",
    "E07, 45, -23.44, 5.062",
    "E07, 47.6, -23.44, 5.822",
    "E08, 30, 23.44, 0.230",
    "E08, 40, 23.44, 0.595",
    "E08, 47.6, 23.44, 0.897"
  })
  void noonShadowOfFence_equalsPublished(
      String id, double latitude, double declination, double length) {
    double elevation =
        DayLength.elevation(Math.toRadians(latitude), Math.toRadians(declination), 0);
    Obstacle fence = Scenes.box(-10, -POST_M, 10, 0, 2);
    ROWS.check(
        id,
        "latitude " + latitude,
        length,
        shadow(fence, 180, Math.toDegrees(elevation)).bounds().getMaxY(),
        0.005);
  }

  /** E09: on the equinox the tip walks along a straight line h·tan φ north of the post. */
  @ParameterizedTest(name = "E09: {0} m at {1}°: {2} m north")
  @CsvSource({"2, 40, 1.678", "2, 45, 2.000", "3, 50, 3.575"})
  void equinoxTip_walksStraight(double height, double latitude, double north) {
    double phi = Math.toRadians(latitude);
    for (double hour = -4; hour <= 4; hour++) {
      double hourAngle = Math.toRadians(15 * hour);
      double bearing = Math.toDegrees(DayLength.bearing(phi, 0, hourAngle));
      double elevation = Math.toDegrees(DayLength.elevation(phi, 0, hourAngle));
      double tip = shadow(post(height), bearing, elevation).bounds().getMaxY();
      assertEquals(north, tip, 0.001 + POST_M);
      if (hour == 4) {
        ROWS.check(
            "E09",
            height + " m at " + latitude + "°, four hours after noon",
            north,
            tip,
            0.001 + POST_M);
      }
    }
  }

  @Test
  void softEdge_isAsWideAsPublished() {
    ROWS.check("E17", "2 m at 40°", 0.045, Shadows.edgeWidthM(2, 40), 0.05 * 0.045);
    ROWS.check("E17", "10 m at 20°", 0.80, Shadows.edgeWidthM(10, 20), 0.05 * 0.80);
  }

  @Test
  void shadowOfConcaveHouse_leavesItsCourtLit() {
    Shape angle = Scenes.rectangle(0, 0, 10, 2).plus(Scenes.rectangle(0, 0, 2, 10));
    Obstacle house = Scenes.solid(Form.PRISM, angle, 0, 1);
    Shape shadow = shadow(house, 180, 45);
    // Each wing is carried 1 m north; the hull of the whole would cover the court.
    assertEquals(10 * 3 + 2 * 8, shadow.area().squareMetres(), 1e-6);
  }

  @Property(tries = 100, seed = "20261125")
  void shadowOfBall_hasAreaOfItsDiscOverSine(
      @ForAll @DoubleRange(min = 10, max = 89.9) double elevation,
      @ForAll @DoubleRange(min = 0, max = 360) double bearing) {
    Obstacle ball = Scenes.solid(Form.ELLIPSOID, Scenes.rectangle(-1, -1, 1, 1), 3, 5);
    double expected = Math.PI / Math.sin(Math.toRadians(elevation));
    assertEquals(
        expected, shadow(ball, bearing, elevation).area().squareMetres(), 0.004 * expected);
  }

  /** On ground that rises along the shadow: L = h / (tan e + s). */
  @Test
  void shadowUphill_isShorter() {
    Ground risingNorth = new Ground(0, 0.2);
    Shape shadow = new Shadows(risingNorth, Math.PI, Math.toRadians(45), 0).of(List.of(post(2)));
    assertEquals(2 / 1.2, shadow.bounds().getMaxY(), 3 * POST_M);
  }

  @Test
  void sunBehindTheSlope_castsNoOutline() {
    Ground steepNorthSlope = new Ground(0, -1);
    Shadows low = new Shadows(steepNorthSlope, Math.PI, Math.toRadians(30), 0);
    assertTrue(low.of(List.of(post(2))).isEmpty());
  }
}
