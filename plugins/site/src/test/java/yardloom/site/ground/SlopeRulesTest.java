package yardloom.site.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Earthwork;
import yardloom.kernel.ground.FallFromHouse;
import yardloom.kernel.ground.PathSlope;
import yardloom.kernel.ground.Spot;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

class SlopeRulesTest {
  /** T-05 from T-01 and T-02 (IRC 2006, R401.3); T-03: 6 in in 10 ft is 5 %, not 6 %. */
  @ParameterizedTest
  @CsvSource({
    "100.00, 99.45, 10, false, true, 0.055, false",
    "100.00, 99.55, 10, false, false, 0.045, false",
    "100.00, 99.50, 10, false, true, 0.05, false",
    "100.00, 99.70, 6, false, true, 0.05, true",
    "100.00, 99.80, 10, true, true, 0.02, true",
    "100.00, 100.20, 10, false, false, -0.02, false"
  })
  void judge_levelsAtAHouse_followTheCode(
      double wallFt,
      double groundFt,
      double distanceFt,
      boolean hard,
      boolean passes,
      double ratio,
      boolean exception) {
    FallFromHouse fall =
        FallFromHouse.judge(
            Length.feet(wallFt), Length.feet(groundFt), Length.feet(distanceFt), hard);
    assertEquals(passes, fall.passes());
    assertEquals(ratio, fall.ratio(), 1e-9);
    assertEquals(exception, fall.byException());
  }

  /** T-03: 2.8624 degrees. */
  @Test
  void fall_sixInchesInTenFeet_isFivePercent() {
    double ratio = FallFromHouse.FALL.ratioTo(FallFromHouse.REACH);
    assertEquals(0.05, ratio, 1e-12);
    assertEquals(2.8624, Math.toDegrees(Math.atan(ratio)), 1e-4);
  }

  private static Surface slopingEast(double ratio) {
    return Surface.of(
        List.of(
            new Spot(Point.metres(0, 0), Length.ZERO),
            new Spot(Point.metres(0, 30), Length.ZERO),
            new Spot(Point.metres(30, 0), Length.metres(30 * ratio)),
            new Spot(Point.metres(30, 30), Length.metres(30 * ratio))),
        List.of());
  }

  /** 2.4 ft in 50 ft is 4.8 %, 2.6 ft is 5.2 %; limits 5 % and 2.083 %. */
  @ParameterizedTest
  @CsvSource({"2.4, 0.048", "2.6, 0.052"})
  void pathSlope_alongTheFall_isTheRatio(double riseFt, double ratio) {
    Surface s = slopingEast(riseFt / 50);
    PathSlope along = PathSlope.of(s, Line.between(Point.metres(1, 5), Point.metres(16, 5))).get();
    assertEquals(ratio, along.running(), 1e-9);
    assertEquals(0, along.cross(), 1e-9);
    PathSlope across = PathSlope.of(s, Line.between(Point.metres(5, 1), Point.metres(5, 16))).get();
    assertEquals(0, across.running(), 1e-9);
    assertEquals(ratio, across.cross(), 1e-9);
  }

  @Test
  void pathSlope_offTheMeasuredGround_isEmpty() {
    assertTrue(
        PathSlope.of(slopingEast(0.1), Line.between(Point.metres(50, 5), Point.metres(60, 5)))
            .isEmpty());
  }

  /** T-06: drop along a swale. */
  @Test
  void drop_alongASwale_isSlopeTimesLength() {
    assertEquals(1.2, Length.feet(60).times(0.02).feet(), 1e-9);
    assertEquals(0.3, Length.feet(30).times(0.01).feet(), 1e-9);
  }

  @Test
  void swale_trapezoid_hasTheSectionAndVolume() {
    Swale swale = new Swale(Length.feet(2), Length.feet(1), 3);
    assertEquals(5, swale.section().squareFeet(), 1e-9);
    assertEquals(8, swale.top().feet(), 1e-9);
    assertEquals(300, swale.volume(Length.feet(60)).cubicFeet(), 1e-6);
    assertFalse(swale.sides() < Swale.STEEPEST);
  }

  /** E01: Wikibooks, Fundamentals of Transportation, Earthwork: fill. */
  @Test
  void endAreaOrPyramid_wikibooksFill_isThePublishedSum() {
    double[] station = {0, 50, 75, 100, 115};
    double[] area = {60, 50, 25, 5, 0};
    double[] expected = {2750, 937.5, 375, 25};
    for (int i = 0; i < 4; i++) {
      assertEquals(
          expected[i],
          Earthwork.endAreaOrPyramid(
                  Area.squareMetres(area[i]),
                  Area.squareMetres(area[i + 1]),
                  Length.metres(station[i + 1] - station[i]))
              .cubicMetres(),
          1e-9);
    }
  }

  private static Area vose(double cutFt) {
    return Area.squareFeet((20 + 1.5 * cutFt) * cutFt);
  }

  /** E02, E04: G. Vose, Handbook of Railroad Construction, 1857, §108. */
  @Test
  void endArea_voseCutting_isThePublishedSum() {
    double[] cut = {0, 5, 10, 15, 0};
    double endFt3 = 0;
    for (int i = 0; i < 4; i++) {
      endFt3 += Earthwork.endArea(vose(cut[i]), vose(cut[i + 1]), Length.feet(50)).cubicFeet();
    }
    assertEquals(56_250, endFt3, 1e-6);
  }

  /** E05: reference guide p. 36, mean 77.0; E06: 370.4 yd³. */
  @Test
  void gridCell_cornerDepths_givesThePublishedFill() {
    List<Length> fill =
        java.util.stream.DoubleStream.of(75.4, 77.5, 74.6, 80.5)
            .mapToObj(z -> Length.feet(83 - z))
            .toList();
    assertEquals(444.4, Earthwork.gridCell(fill, Area.squareFeet(2000)).cubicFeet() / 27, 0.05);
    List<Length> one = List.of(Length.feet(1), Length.feet(1), Length.feet(1), Length.feet(1));
    assertEquals(370.4, 4 * Earthwork.gridCell(one, Area.squareFeet(2500)).cubicFeet() / 27, 0.05);
  }

  /** E08: a pyramid by end area is half as much again as A h/3, which is what is taken. */
  @Test
  void endArea_pyramid_overstatesByHalf() {
    Area base = Area.squareMetres(12);
    double end = Earthwork.endArea(base, Area.ZERO, Length.metres(9)).cubicMetres();
    double pyramid = Earthwork.endAreaOrPyramid(base, Area.ZERO, Length.metres(9)).cubicMetres();
    assertEquals(36, pyramid, 1e-9);
    assertEquals(1.5, end / pyramid, 1e-9);
  }

  /** E01 and E08 in one: even sections of the Wikibooks fill's first 100 m. */
  @Test
  void along_evenSections_addsUpAndRunsOutAsAPyramid() {
    List<Area> sections =
        java.util.stream.DoubleStream.of(60, 50, 0).mapToObj(Area::squareMetres).toList();
    // 25 (60 + 50)/2 and, as a pyramid, 25 × 50/3.
    assertEquals(
        1375 + 1250 / 3.0, Earthwork.along(sections, Length.metres(25)).cubicMetres(), 1e-9);
  }

  /** E06, as a grid of four cells, and a fifth part of it turned into fill. */
  @Test
  void grid_cutAndFill_areKeptApart() {
    List<Length> depths =
        java.util.stream.DoubleStream.of(1, 1, 1, 1, 1, 1, 1, 1, 1).mapToObj(Length::feet).toList();
    Earthwork.Moved all = Earthwork.grid(depths, 3, Area.squareFeet(2500));
    assertEquals(370.4, all.cut().cubicFeet() / 27, 0.05);
    assertEquals(0, all.fill().cubicFeet(), 0);
    List<Length> two =
        java.util.stream.DoubleStream.of(1, 1, -2, 1, 1, -2).mapToObj(Length::feet).toList();
    Earthwork.Moved both = Earthwork.grid(two, 3, Area.squareFeet(100));
    assertEquals(100, both.cut().cubicFeet(), 1e-9);
    assertEquals(50, both.fill().cubicFeet(), 1e-9);
  }
}
