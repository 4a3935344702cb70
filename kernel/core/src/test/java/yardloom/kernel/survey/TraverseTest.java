package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Published traverses. Purdue ASM 215 "travcalc"; J. Mahun, Traverse Computations, figure I-5. */
class TraverseTest {
  private static Traverse traverse(Object... bearingsAndFeet) {
    List<Course> courses = new ArrayList<>();
    for (int i = 0; i < bearingsAndFeet.length; i += 2) {
      courses.add(
          new Course(
              Bearings.parse((String) bearingsAndFeet[i]),
              Length.feet((Double) bearingsAndFeet[i + 1])));
    }
    return new Traverse(courses);
  }

  private static Traverse purdue() {
    return traverse(
        "N 26°10'E",
        285.10,
        "S 75°25'E",
        610.45,
        "S 15°30'W",
        720.48,
        "N 1°42'W",
        203.00,
        "N 53°06'W",
        647.02);
  }

  private static Traverse mahun() {
    return traverse(
        "S 68°05'35\"W",
        472.68,
        "N 19°46'00\"W",
        216.13,
        "N 45°55'20\"E",
        276.52,
        "S 54°59'15\"E",
        382.24);
  }

  private static void assertSteps(
      List<Traverse.Step> steps, double[][] expectedFt, double toleranceFt) {
    for (int i = 0; i < expectedFt.length; i++) {
      assertEquals(expectedFt[i][0], steps.get(i).latitude().feet(), toleranceFt, "latitude " + i);
      assertEquals(
          expectedFt[i][1], steps.get(i).departure().feet(), toleranceFt, "departure " + i);
    }
  }

  /** S-10 (formula) and S-11 (US Navy Engineering Aid manual 14070, p. 7-12, at full precision). */
  @Test
  void course_bearingAndDistance_givesLatitudeAndDeparture() {
    Course a = new Course(Bearings.parse("N 45°30'E"), Length.feet(100));
    assertEquals(70.0909, a.latitude().feet(), 1e-4);
    assertEquals(71.3250, a.departure().feet(), 1e-4);
    Course b = new Course(Bearings.parse("N 15°30'E"), Length.feet(725.32));
    assertEquals(698.940, b.latitude().feet(), 1e-3);
    assertEquals(193.833, b.departure().feet(), 1e-3);
    // The manual's table method gives 698.59 for 725 ft; that is its rounding, not a target.
    Course c = new Course(Bearings.parse("N 15°30'E"), Length.feet(725));
    assertEquals(698.632, c.latitude().feet(), 1e-3);
    assertNotEquals(698.59, c.latitude().feet(), 0.01);
  }

  /** S-12, S-13. */
  @Test
  void raw_purdue_hasThePublishedParts() {
    assertSteps(
        purdue().raw(),
        new double[][] {
          {255.88, 125.72},
          {-153.70, 590.78},
          {-694.28, -192.54},
          {202.91, -6.02},
          {388.48, -517.41}
        },
        0.01);
  }

  /** S-14, S-15. */
  @Test
  void misclosure_purdue_isThePublishedOneToItsRounding() {
    Traverse t = purdue();
    assertEquals(-0.71, t.sumOfLatitudes().feet(), 0.01);
    assertEquals(0.53, t.sumOfDepartures().feet(), 0.01);
    assertEquals(-0.7043, t.sumOfLatitudes().feet(), 5e-4);
    assertEquals(0.5332, t.sumOfDepartures().feet(), 5e-4);
    assertEquals(0.8833, t.misclosure().feet(), 5e-4);
    assertEquals(2466.05, t.total().feet(), 1e-9);
    double n = t.precision().getAsDouble();
    assertEquals(2791.8, n, 0.1);
    assertTrue(n > 2760 && n < 2800, "the published 1/2771 is rounded at each step");
  }

  /** S-16, S-17, S-18, S-19. */
  @Test
  void balanced_purdue_hasThePublishedPartsCoordinatesAndArea() {
    List<Traverse.Step> steps = purdue().balanced();
    assertSteps(
        steps,
        new double[][] {
          {255.96, 125.66},
          {-153.52, 590.65},
          {-694.07, -192.69},
          {202.97, -6.07},
          {388.66, -517.55}
        },
        0.02);
    List<Point> corners =
        Traverse.corners(new Point(Length.feet(10000), Length.feet(10000)), steps);
    double[][] expected = {
      {10125.66, 10255.96}, {10716.31, 10102.44}, {10523.62, 9408.37}, {10517.55, 9611.34}
    };
    for (int i = 0; i < 4; i++) {
      assertEquals(expected[i][0], corners.get(i + 1).x().feet(), 0.02);
      assertEquals(expected[i][1], corners.get(i + 1).y().feet(), 0.02);
    }
    double areaFt2 =
        PlaneAreas.byCoordinates(Traverse.corners(Point.metres(0, 0), steps)).squareFeet();
    assertEquals(272_611.2, areaFt2, 1.0);
    assertEquals(6.2583, areaFt2 / 43_560, 1e-4);
    Course ab =
        Course.ofParts(
            corners.get(1).y().minus(corners.get(0).y()),
            corners.get(1).x().minus(corners.get(0).x()));
    assertEquals(285.146, ab.distance().feet(), 1e-3);
    assertEquals(26.1483, ab.azimuth().degrees(), 1e-3);
  }

  /** S-20, method of Mahun chapter J. */
  @Test
  void closing_firstFourPurdueCourses_isTheMissingCall() {
    Course closing = new Traverse(purdue().courses().subList(0, 4)).closing();
    assertEquals(647.869, closing.distance().feet(), 0.002);
    assertEquals(306.9215, closing.azimuth().degrees(), 5e-4);
  }

  /** S-21, S-22. */
  @Test
  void raw_mahunLoop_hasThePublishedPartsAndMisclosure() {
    Traverse t = mahun();
    assertSteps(
        t.raw(),
        new double[][] {
          {-176.357, -438.548}, {203.395, -73.093}, {192.357, 198.651}, {-219.312, 313.065}
        },
        0.001);
    assertEquals(1347.57, t.total().feet(), 1e-9);
    assertEquals(0.083, t.sumOfLatitudes().feet(), 1e-3);
    assertEquals(0.075, t.sumOfDepartures().feet(), 1e-3);
    assertEquals(0.1112, t.misclosure().feet(), 1e-4);
    assertEquals(12_116, t.precision().getAsDouble(), 121);
  }

  /** S-23, S-24. */
  @Test
  void balanced_mahunLoop_hasTheCoordinatesAndArea() {
    List<Traverse.Step> steps = mahun().balanced();
    List<Point> corners = Traverse.corners(new Point(Length.feet(2000), Length.feet(500)), steps);
    double[][] expected = {{1561.426, 323.614}, {1488.321, 526.996}, {1686.956, 719.336}};
    for (int i = 0; i < 3; i++) {
      assertEquals(expected[i][0], corners.get(i + 1).x().feet(), 0.002);
      assertEquals(expected[i][1], corners.get(i + 1).y().feet(), 0.002);
    }
    assertEquals(
        102_935.7,
        PlaneAreas.byCoordinates(Traverse.corners(Point.metres(0, 0), steps)).squareFeet(),
        0.5);
  }

  private static List<Point> mahunCogo() {
    double[][] ne = {
      {406.31, 1259.97}, {235.12, 1489.47}, {65.81, 1126.40}, {317.89, 942.04}, {675.32, 1282.54}
    };
    List<Point> corners = new ArrayList<>();
    for (double[] c : ne) {
      corners.add(new Point(Length.feet(c[1]), Length.feet(c[0])));
    }
    return corners;
  }

  /** S-25: Mahun COGO H; the product 264,489 in its text is a misprint for 264,839. */
  @Test
  void byCoordinates_mahunFigureH2_isTheFullPrecisionArea() {
    double area = PlaneAreas.byCoordinates(mahunCogo()).squareFeet();
    assertEquals(140_493.1, area, 0.1);
    assertEquals(140_494, area, 1.0);
    double misprinted = area + (264_839 - 264_489) / 2.0;
    assertNotEquals(misprinted, area, 100);
  }

  /** S-26: Mahun COGO H states all three invariances. */
  @Test
  void byCoordinates_reversedTurnedOrSwapped_isTheSame() {
    List<Point> corners = mahunCogo();
    double area = PlaneAreas.byCoordinates(corners).squareFeet();
    List<Point> reversed = new ArrayList<>(corners);
    Collections.reverse(reversed);
    List<Point> rotated = new ArrayList<>(corners);
    Collections.rotate(rotated, 2);
    List<Point> swapped = corners.stream().map(p -> new Point(p.y(), p.x())).toList();
    for (List<Point> other : List.of(reversed, rotated, swapped)) {
      assertEquals(area, PlaneAreas.byCoordinates(other).squareFeet(), 1e-6);
    }
  }

  private static List<Traverse.Step> handbook() {
    double[][] parts = {
      {-132.3, -135.6}, {9.6, -77.5}, {97.9, -198.5}, {161.9, 143.6}, {-35.3, 246.7}, {-101.8, 21.3}
    };
    List<Traverse.Step> steps = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double[] p = parts[i];
      steps.add(new Traverse.Step(Length.feet(p[0]), Length.feet(p[1])));
    }
    return steps;
  }

  /** S-27: Handbook of Civil Engineering Calculations, there by double meridian distances. */
  @Test
  void byCoordinates_handbookTraverse_hasTheArea() {
    List<Point> corners = Traverse.corners(Point.metres(0, 0), handbook());
    assertEquals(72_106.19, PlaneAreas.byCoordinates(corners).squareFeet(), 0.01);
  }

  @Provide
  Arbitrary<List<Course>> courses() {
    Arbitrary<Course> course =
        net.jqwik.api.Combinators.combine(
                Arbitraries.doubles().between(0, 359.99), Arbitraries.doubles().between(1, 500))
            .as((deg, m) -> new Course(Angle.degrees(deg), Length.metres(m)));
    return course.list().ofMinSize(2).ofMaxSize(15);
  }

  /** S-29. */
  @Property(tries = 200, seed = "20261125")
  void balanced_anyTraverse_closes(@ForAll("courses") List<Course> courses) {
    Traverse t = new Traverse(courses);
    double lat = t.balanced().stream().mapToDouble(s -> s.latitude().metres()).sum();
    double dep = t.balanced().stream().mapToDouble(s -> s.departure().metres()).sum();
    assertEquals(0, lat, 1e-9 * t.total().metres());
    assertEquals(0, dep, 1e-9 * t.total().metres());
  }

  /** S-30. */
  @Test
  void balanced_closedSquare_isTheInputExactly() {
    Traverse square = traverse("North", 100.0, "East", 100.0, "South", 100.0, "West", 100.0);
    for (int i = 0; i < 4; i++) {
      assertEquals(
          square.raw().get(i).latitude().metres(),
          square.balanced().get(i).latitude().metres(),
          1e-13);
    }
  }
}
