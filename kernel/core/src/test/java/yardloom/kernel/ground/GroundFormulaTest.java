package yardloom.kernel.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/** Earth, falls and slopes of measured ground against published cases and plane geometry. */
class GroundFormulaTest {
  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Area m2(double squareMetres) {
    return Area.squareMetres(squareMetres);
  }

  /**
   * Wikibooks, Fundamentals of Transportation, Earthwork: fill of 60, 50, 25, 5 and 0 m² at 0, 50,
   * 75, 100 and 115 m gives 2750 + 937.5 + 375 + 25 = 4087.5 m³, the last piece a pyramid.
   */
  @Test
  void endAreas_ofTheWikibooksFill() {
    assertEquals(2750, Earthwork.endAreaOrPyramid(m2(60), m2(50), m(50)).cubicMetres(), 1e-9);
    assertEquals(937.5, Earthwork.endAreaOrPyramid(m2(50), m2(25), m(25)).cubicMetres(), 1e-9);
    assertEquals(375, Earthwork.endAreaOrPyramid(m2(25), m2(5), m(25)).cubicMetres(), 1e-9);
    assertEquals(25, Earthwork.endAreaOrPyramid(m2(5), m2(0), m(15)).cubicMetres(), 1e-9);
    assertEquals(25, Earthwork.endAreaOrPyramid(m2(0), m2(5), m(15)).cubicMetres(), 1e-9);
    assertEquals(0, Earthwork.endAreaOrPyramid(m2(0), m2(0), m(15)).cubicMetres());
  }

  /** Every 3 m: (4 + 7) / 2 × 3 = 16.5, then the pyramid 7 / 3 × 3 = 7. */
  @Test
  void along_addsPieces_andEndsAsAPyramid() {
    Volume sum = Earthwork.along(List.of(m2(4), m2(7), m2(0)), m(3));
    assertEquals(23.5, sum.cubicMetres(), 1e-9);
    assertEquals(Volume.ZERO, Earthwork.along(List.of(m2(4)), m(3)));
  }

  /**
   * Two by three crossings, cells of 10 m²: (0.1 + 0.3 + 0.2 + 0.6) / 4 = 0.3 m cut, 3 m³; (0.3 −
   * 0.5 + 0.6 − 1.2) / 4 = −0.2 m, 2 m³ of fill. No cell reaches from the end of a row to the start
   * of the next.
   */
  @Test
  void grid_keepsCutAndFillApart() {
    List<Length> depths =
        Stream.of(0.1, 0.3, -0.5, 0.2, 0.6, -1.2).map(GroundFormulaTest::m).toList();
    Earthwork.Moved moved = Earthwork.grid(depths, 3, m2(10));
    assertEquals(3, moved.cut().cubicMetres(), 1e-9);
    assertEquals(2, moved.fill().cubicMetres(), 1e-9);
    assertEquals(0, Earthwork.gridCell(List.of(), m2(10)).cubicMetres());
  }

  /** Residential Code R401.3: 6 in over the first 10 ft. */
  @Test
  void softGround_fallsSixInchesInTenFeet() {
    FallFromHouse just = FallFromHouse.judge(Length.inches(6), Length.ZERO, Length.feet(10), false);
    assertTrue(just.passes());
    assertFalse(just.byException());
    assertEquals(0.05, just.ratio(), 1e-12);
    assertFalse(
        FallFromHouse.judge(Length.inches(5.9), Length.ZERO, Length.feet(10), false).passes());
    assertTrue(
        FallFromHouse.judge(Length.inches(12), Length.ZERO, Length.feet(20), false).passes());
    FallFromHouse towards =
        FallFromHouse.judge(Length.ZERO, Length.inches(6), Length.feet(10), false);
    assertFalse(towards.passes());
    assertEquals(-0.05, towards.ratio(), 1e-12);
  }

  /** R401.3: nearer than 10 ft five percent to a drain; hard surfaces two percent. */
  @Test
  void nearLotLines_andHardSurfaces_areExceptions() {
    FallFromHouse near = FallFromHouse.judge(Length.inches(3), Length.ZERO, Length.feet(5), false);
    assertTrue(near.passes());
    assertTrue(near.byException());
    assertFalse(
        FallFromHouse.judge(Length.inches(2.9), Length.ZERO, Length.feet(5), false).passes());
    FallFromHouse hard =
        FallFromHouse.judge(Length.inches(2.4), Length.ZERO, Length.feet(10), true);
    assertTrue(hard.passes());
    assertTrue(hard.byException());
    assertFalse(
        FallFromHouse.judge(Length.inches(2.3), Length.ZERO, Length.feet(10), true).passes());
    assertFalse(
        FallFromHouse.judge(Length.inches(6), Length.ZERO, Length.feet(10), true).byException(),
        "steep enough for soft ground too");
  }

  /**
   * Bottom 2 ft, 0.5 ft deep, sides 3:1: (2 + 3 × 0.5) × 0.5 = 1.75 sq ft, 5 ft at the top; 40 ft
   * of it hold 70 cu ft (water G-07).
   */
  @Test
  void swale_isATrapezoid() {
    Swale swale = new Swale(Length.feet(2), Length.feet(0.5), 3);
    assertEquals(1.75, swale.section().squareFeet(), 1e-9);
    assertEquals(5, swale.top().feet(), 1e-9);
    assertEquals(70, swale.volume(Length.feet(40)).cubicFeet(), 1e-9);
    assertEquals(0.25, new Swale(Length.ZERO, m(0.5), 1).section().squareMetres(), 1e-9);
    assertThrows(PlanException.class, () -> new Swale(m(-0.1), m(0.5), 3));
    assertThrows(PlanException.class, () -> new Swale(m(1), Length.ZERO, 3));
    assertThrows(PlanException.class, () -> new Swale(m(1), m(0.5), -1));
    assertThrows(PlanException.class, () -> new Swale(m(1), m(0.5), Double.NaN));
  }

  /** The plane z = 100 + 0.03 x − 0.04 y: 5 % in all, down towards x −0.6, y 0.8. */
  private static Surface plane() {
    return Surface.of(List.of(spot(0, 0), spot(10, 0), spot(10, 8), spot(0, 8)), List.of());
  }

  private static Spot spot(double x, double y) {
    return new Spot(Point.metres(x, y), m(100 + 0.03 * x - 0.04 * y));
  }

  @Test
  void plane_hasItsLevelsSlopeAndDownhillBearing() {
    Surface plane = plane();
    assertEquals(100 + 0.06 - 0.2, plane.level(Point.metres(2, 5)).metres(), 1e-9);
    assertEquals(100 + 0.27 - 0.04, plane.level(Point.metres(9, 1)).metres(), 1e-9);
    Slope slope = plane.slopeAt(Point.metres(2, 5)).orElseThrow();
    assertEquals(0.05, slope.ratio(), 1e-9);
    // From north by east: atan2(−0.6, 0.8) is −36.870°, so 323.130°.
    assertEquals(323.130, slope.downhill().degrees(), 1e-3);
    assertEquals(99.68, plane.lowest().metres(), 1e-9);
    assertEquals(100.3, plane.highest().metres(), 1e-9);
  }

  /**
   * Square to downhill, 323.130° + 90° less 360°: 53.130°. At 99.9 m y = 2.5 + 0.75 x: from (0,
   * 2.5) to (7.333, 8), √(7.333² + 5.5²) = 9.1667 m.
   */
  @Test
  void contour_runsSquareToTheFall() {
    assertEquals(53.130, plane().contourBearing(Point.metres(2, 5)).degrees(), 1e-3);
    assertEquals(9.1667, plane().contour(m(99.9)).length().metres(), 1e-3);
  }

  /** Along x the path rises 3 % and leans 4 %, along y the other way about. */
  @Test
  void path_runsAndLeansAsThePlane() {
    PathSlope along =
        PathSlope.of(plane(), Line.between(Point.metres(1, 2), Point.metres(8.5, 2))).orElseThrow();
    assertEquals(0.03, along.running(), 1e-9);
    assertEquals(0.04, along.cross(), 1e-9);
    PathSlope up =
        PathSlope.of(plane(), Line.between(Point.metres(1, 7), Point.metres(1, 1))).orElseThrow();
    assertEquals(0.04, up.running(), 1e-9);
    assertEquals(0.03, up.cross(), 1e-9);
    assertTrue(
        PathSlope.of(plane(), Line.between(Point.metres(20, 1), Point.metres(30, 1))).isEmpty());
  }

  /** Flat for 4 m, then 1 m up in 2 m: the steep metres count, not the mean of 6 m. */
  @Test
  void path_tellsItsSteepestMetre() {
    Surface bank =
        Surface.of(
            Stream.of(0.0, 4.0, 6.0)
                .flatMap(
                    x ->
                        Stream.of(0.0, 3.0)
                            .map(y -> new Spot(Point.metres(x, y), m(Math.max(0, x - 4) / 2))))
                .toList(),
            List.of());
    PathSlope slope =
        PathSlope.of(bank, Line.between(Point.metres(0, 1), Point.metres(6, 1))).orElseThrow();
    assertEquals(0.5, slope.running(), 1e-9);
    assertEquals(0, slope.cross(), 1e-9);
  }

  /** Flat but for its last metre, 0.3 m up: that one tells, though no metre begins behind it. */
  @Test
  void path_isLookedAtToItsEnd() {
    Surface kerb =
        Surface.of(
            Stream.of(0.0, 5.0, 6.0)
                .flatMap(
                    x ->
                        Stream.of(0.0, 3.0)
                            .map(y -> new Spot(Point.metres(x, y), m(Math.max(0, x - 5) * 0.3))))
                .toList(),
            List.of());
    PathSlope slope =
        PathSlope.of(kerb, Line.between(Point.metres(0, 1), Point.metres(6, 1))).orElseThrow();
    assertEquals(0.3, slope.running(), 1e-9);
  }
}
