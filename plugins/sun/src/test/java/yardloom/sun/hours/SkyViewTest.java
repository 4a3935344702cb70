package yardloom.sun.hours;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.outside.OutsideRows;
import yardloom.sun.body.Ground;
import yardloom.sun.shade.ColumnProfile;
import yardloom.sun.shade.HourColumns;
import yardloom.sun.shade.Scenes;
import yardloom.sun.shade.ShadeScene;

/** Sky view against closed forms: rows E15 and E16. */
class SkyViewTest {
  private static final OutsideRows ROWS =
      OutsideRows.of(SkyViewTest.class, "/yardloom/sun/sun-checks.csv");

  private static double view(ShadeScene scene, double x, double y) {
    HourColumns sky = new HourColumns(scene.frame(), scene.ground(), 240, Double.POSITIVE_INFINITY);
    ColumnProfile profile = new ColumnProfile(sky);
    scene.mark(x, y, 0, ShadeScene.NOBODY, profile);
    double[] months = new double[12];
    new SkyTally(scene, sky).of(profile, months);
    return months[0];
  }

  /** (1 + cos β) / 2, β = atan(H/d), whichever way the wall runs and at any latitude. */
  @ParameterizedTest(name = "E15: H/d {0}: {1}, latitude {2}")
  @CsvSource({
    "0.5, 0.947, 40", "1, 0.854, 40", "2, 0.724, 40",
    "0.5, 0.947, 0", "1, 0.854, -60", "2, 0.724, 70"
  })
  void besideLongWall_equalsClosedForm(double heightToDistance, double expected, double latitude) {
    double h = 3 * heightToDistance;
    ShadeScene eastWest = Scenes.scene(latitude, Scenes.box(-1e5, -0.01, 1e5, 0, h));
    ShadeScene northSouth = Scenes.scene(latitude, Scenes.box(-0.01, -1e5, 0, 1e5, h));
    assertEquals(expected, view(eastWest, 0, 3), 0.002);
    assertEquals(expected, view(eastWest, 0, -3.01), 0.002);
    ROWS.check(
        "E15",
        "H/d " + heightToDistance + ", latitude " + latitude,
        expected,
        view(northSouth, 3, 0),
        0.002);
  }

  /** cos β for a lane between two walls. */
  @ParameterizedTest(name = "E16: latitude {0}")
  @CsvSource({"40", "0", "-35"})
  void betweenTwoLongWalls_equalsClosedForm(double latitude) {
    ShadeScene lane =
        Scenes.scene(latitude, Scenes.box(-1e5, -3, 1e5, -2, 2), Scenes.box(-1e5, 2, 1e5, 3, 2));
    ROWS.check("E16", "lane, latitude " + latitude, 0.707, view(lane, 0, 0), 0.002);
  }

  /** cos² β for a basin whose rim stands at β all around. */
  @ParameterizedTest(name = "E16: latitude {0}")
  @CsvSource({"40", "10", "-35"})
  void inRoundBasin_equalsClosedForm(double latitude) {
    List<double[]> rim = new ArrayList<>();
    for (int bearing = 0; bearing < 360; bearing += 30) {
      rim.add(new double[] {Math.toRadians(bearing), Math.toRadians(45)});
    }
    ShadeScene basin = new ShadeScene(Math.toRadians(latitude), 0, Ground.LEVEL, rim, List.of());
    ROWS.check("E16", "basin, latitude " + latitude, 0.500, view(basin, 0, 0), 0.002);
  }

  /** A court of four walls, 2a by 2b, height h: by the view factor to its open top. */
  @ParameterizedTest(name = "court {0} by {1}, {2} high")
  @CsvSource({"4, 4, 4", "6, 3, 2", "10, 4, 8"})
  void inCourt_equalsViewFactorOfItsTop(double width, double depth, double h) {
    double a = width / 2;
    double b = depth / 2;
    // Four times the factor from a point to a rectangle above its corner (Hottel and Sarofim).
    double x = a / h;
    double y = b / h;
    double quarter =
        (x / Math.sqrt(1 + x * x) * Math.atan(y / Math.sqrt(1 + x * x))
                + y / Math.sqrt(1 + y * y) * Math.atan(x / Math.sqrt(1 + y * y)))
            / (2 * Math.PI);
    ShadeScene court =
        Scenes.scene(
            40,
            Scenes.box(-a - 1, -b - 1, a + 1, -b, h),
            Scenes.box(-a - 1, b, a + 1, b + 1, h),
            Scenes.box(-a - 1, -b, -a, b, h),
            Scenes.box(a, -b, a + 1, b, h));
    assertEquals(4 * quarter, view(court, 0, 0), 0.01);
  }

  /** A disc overhead hides sin² of half its angle: a ball seen straight above. */
  @Property(tries = 60, seed = "20261125")
  void underBall_hidesSquareOfItsSine(
      @ForAll @DoubleRange(min = -70, max = 70) double latitude,
      @ForAll @DoubleRange(min = 0.2, max = 2.5) double radius) {
    ShadeScene scene =
        Scenes.scene(
            latitude,
            Scenes.solid(
                Form.ELLIPSOID,
                Scenes.rectangle(-radius, -radius, radius, radius),
                5 - radius,
                5 + radius));
    double sine = radius / 5;
    assertEquals(1 - sine * sine, view(scene, 0, 0), 0.003);
  }

  @Property(tries = 50, seed = "20261125")
  void openGround_seesTheWholeSky(@ForAll @DoubleRange(min = -89, max = 89) double latitude) {
    assertEquals(1, view(Scenes.scene(latitude), 0, 0), 5e-4);
    assertTrue(view(Scenes.scene(latitude, Scenes.box(-1, -1, 1, 1, 2)), 0, 0) < 1e-9, "inside");
  }
}
