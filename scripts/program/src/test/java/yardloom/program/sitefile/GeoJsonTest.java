package yardloom.program.sitefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;

class GeoJsonTest {
  private static final LocalPlane PLANE =
      new LocalPlane(Angle.degrees(37.75), Angle.degrees(-122.43), Angle.ZERO);

  private static Shape outline(String text) {
    return GeoOutline.read(text, Optional.of(new LonLat(-122.43, 37.75))).shape();
  }

  private static PlanException refused(String text, ProblemCode code) {
    PlanException e = assertThrows(PlanException.class, () -> outline(text));
    assertEquals(code, e.problems().get(0).code(), e.getMessage());
    return e;
  }

  /** 1e-6° of latitude is 0.1112 m on the mean sphere; on WGS 84 within 0.5 % of it. */
  @Test
  void toPlan_millionthOfADegree_isAboutElevenCentimetres() {
    Point p = PLANE.toPlan(-122.43, 37.750001);
    assertEquals(0.1112, p.y().metres(), 0.0006);
    assertEquals(0, p.x().metres(), 1e-9);
  }

  /**
   * Lengths of a degree on WGS 84 at latitude φ: NGA series 111132.92 − 559.82 cos 2φ + 1.175 cos
   * 4φ and 111412.84 cos φ − 93.5 cos 3φ + 0.118 cos 5φ metres.
   */
  @Test
  void toPlan_smallSteps_haveTheEllipsoidsDegreeLengths() {
    double f = Math.toRadians(37.75);
    double north = 111132.92 - 559.82 * Math.cos(2 * f) + 1.175 * Math.cos(4 * f);
    double east = 111412.84 * Math.cos(f) - 93.5 * Math.cos(3 * f) + 0.118 * Math.cos(5 * f);
    assertEquals(north * 1e-4, PLANE.toPlan(-122.43, 37.7501).y().metres(), 1e-3);
    assertEquals(east * 1e-4, PLANE.toPlan(-122.4299, 37.75).x().metres(), 1e-3);
  }

  @Test
  void toGlobe_turnedPlan_readsBack() {
    LocalPlane turned =
        new LocalPlane(Angle.degrees(47.6), Angle.degrees(-122.3), Angle.degrees(30));
    double[] globe = turned.toGlobe(turned.toPlan(-122.2995, 47.6004));
    assertEquals(-122.2995, globe[0], 1e-9);
    assertEquals(47.6004, globe[1], 1e-9);
    // True north lies 30° clockwise from up: a step north goes up and to the right.
    Point north = turned.toPlan(-122.3, 47.6001);
    assertEquals(Math.tan(Math.toRadians(30)), north.x().ratioTo(north.y()), 1e-6);
    assertTrue(north.y().metres() > 0);
  }

  private static final String SQUARE =
      "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
          + "[[[-122.43,37.75],[-122.4297,37.75],[-122.4297,37.7502],[-122.43,37.7502],"
          + "[-122.43,37.75]]]}}";

  @Test
  void read_feature_hasItsCornersWithoutTheRepeatedOne() {
    List<Point> corners = outline(SQUARE).corners();
    assertEquals(4, corners.size());
    assertEquals(26.4, outline(SQUARE).width().metres(), 0.1);
    assertEquals(22.2, outline(SQUARE).depth().metres(), 0.1);
  }

  /** A plan with north to the right has the east side of the lot at its lower edge. */
  @Test
  void read_northToTheRight_turnsTheOutline() {
    Shape turned =
        GeoOutline.read(SQUARE, Optional.of(new LonLat(-122.43, 37.75)), Angle.degrees(90)).shape();
    assertEquals(22.2, turned.width().metres(), 0.1);
    assertEquals(26.4, turned.depth().metres(), 0.1);
    assertEquals(-26.4, turned.bounds().getMinY(), 0.1);
  }

  @Test
  void read_latitudeFirst_saysSo() {
    String swapped = SQUARE.replace("-122.43,37.75]", "37.75,-122.43]");
    assertTrue(refused(swapped, ProblemCode.OUT_OF_RANGE).getMessage().contains("longitude first"));
  }

  /** closed, at least four positions. */
  @Test
  void read_openRing_isRefused() {
    refused(SQUARE.replace(",[-122.43,37.75]]]", "]]"), ProblemCode.BAD_SHAPE);
  }

  @Test
  void read_brokenTextAndNoPolygon_areRefused() {
    refused("{\"type\":", ProblemCode.SYNTAX);
    refused("{\"type\":\"Point\",\"coordinates\":[-122.43,37.75]}", ProblemCode.SYNTAX);
  }
}
