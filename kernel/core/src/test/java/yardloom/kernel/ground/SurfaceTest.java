package yardloom.kernel.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

class SurfaceTest {
  private static Spot spot(double x, double y, double z) {
    return new Spot(Point.metres(x, y), Length.metres(z));
  }

  private static Surface plane() {
    return Surface.of(List.of(spot(0, 0, 100), spot(50, 0, 98), spot(0, 40, 101.6)), List.of());
  }

  /** T-10, by the plane coefficients of T-09 (XMS wiki, Linear interpolation). */
  @Test
  void levelAt_threePoints_isThePlane() {
    Surface s = plane();
    assertEquals(99.6, s.levelAt(Point.metres(20, 10)).get().metres(), 1e-6);
    Slope slope = s.slopeAt(Point.metres(20, 10)).get();
    assertEquals(0.0565685, slope.ratio(), 1e-6);
    assertEquals(135, slope.downhill().degrees(), 1e-6);
    assertEquals(-0.04, slope.along(yardloom.kernel.unit.Angle.degrees(90)), 1e-9);
    assertEquals(0.04, slope.along(yardloom.kernel.unit.Angle.degrees(0)), 1e-9);
  }

  /** T-11: outside the hull nothing is known. */
  @Test
  void levelAt_outsideThePoints_isEmpty() {
    assertTrue(plane().levelAt(Point.metres(40, 30)).isEmpty());
    assertTrue(plane().slopeAt(Point.metres(-1, 0)).isEmpty());
    PlanException e = assertThrows(PlanException.class, () -> plane().level(Point.metres(40, 30)));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
  }

  /** T-14: levels 98 (touched), 99, 100 and 101. */
  @Test
  void contours_ofThePlane_areTheFourLevels() {
    List<Contours.Contour> contours = Contours.of(plane(), Length.metres(1), Length.ZERO);
    assertEquals(
        List.of(98.0, 99.0, 100.0, 101.0), contours.stream().map(c -> c.level().metres()).toList());
    assertEquals(List.of(0, 1, 1, 1), contours.stream().map(c -> c.lines().size()).toList());
    Line hundred = contours.get(2).lines().get(0);
    // z = 100 - 0.04 x + 0.04 y: through (0, 0) and (400/18, 400/18).
    assertEquals(0, hundred.start().distance(Point.metres(0, 0)).metres(), 1e-9);
    assertEquals(400 / 18.0, hundred.end().x().metres(), 1e-9);
    assertEquals(400 / 18.0, hundred.end().y().metres(), 1e-9);
  }

  /** T-08: NCARB ARE community, 824.44; slope 55.56 %. */
  @Test
  void level_betweenContours_isInterpolated() {
    Surface s =
        Surface.of(
            List.of(spot(0, 0, 820), spot(10, 0, 820), spot(0, 18, 830), spot(10, 18, 830)),
            List.of());
    assertEquals(824.444, s.level(Point.metres(5, 8)).metres(), 1e-3);
    assertEquals(0.5556, s.slopeAt(Point.metres(5, 8)).get().ratio(), 1e-4);
  }

  @Provide
  Arbitrary<List<Point>> places() {
    Arbitrary<Double> c = Arbitraries.doubles().between(0, 50).ofScale(2);
    return Combinators.combine(c, c)
        .as(Point::metres)
        .list()
        .uniqueElements()
        .ofMinSize(3)
        .ofMaxSize(25)
        .map(
            some -> {
              // The frame makes sure that the points span an area.
              List<Point> all = new ArrayList<>(some);
              for (double[] p : new double[][] {{-1, -1}, {51, -1}, {51, 51}, {-1, 51}}) {
                all.add(Point.metres(p[0], p[1]));
              }
              return all;
            });
  }

  private static Spot onPlane(Point p) {
    return new Spot(p, Length.metres(100 + 0.05 * p.x().metres() - 0.03 * p.y().metres()));
  }

  /** T-13: exact on a plane; E07: volume = area × depth at the centroid. */
  @Property(tries = 60, seed = "20261125")
  void surface_coplanarPoints_isExact(
      @ForAll("places") List<Point> places,
      @ForAll @DoubleRange(min = 0, max = 50) double x,
      @ForAll @DoubleRange(min = 0, max = 50) double y) {
    Surface s = Surface.of(places.stream().map(SurfaceTest::onPlane).toList(), List.of());
    Point p = Point.metres(x, y);
    assertEquals(onPlane(p).level().metres(), s.level(p).metres(), 1e-9);
    Shape bed = Shape.rectangle(Point.metres(10, 10), Length.metres(7), Length.metres(3));
    assertEquals(
        onPlane(bed.centroid()).level().metres(), LevelBed.balanced(s, bed).metres(), 1e-6);
  }

  /** T-12, T-13: contours of a plane are parallel lines square to the fall. */
  @Property(tries = 30, seed = "20261125")
  void contours_coplanarPoints_runSquareToTheFall(@ForAll("places") List<Point> places) {
    Surface s = Surface.of(places.stream().map(SurfaceTest::onPlane).toList(), List.of());
    for (Contours.Contour c : Contours.of(s, Length.metres(0.5), Length.ZERO)) {
      assertTrue(c.lines().size() <= 1);
      for (Line line : c.lines()) {
        for (Point p : line.points()) {
          assertEquals(c.level().metres(), onPlane(p).level().metres(), 1e-8);
        }
      }
    }
  }

  @Test
  void surface_breakline_bendsThere() {
    // A bank: flat at 100, then down to 98 across 2 m; without the line the edge would be crossed.
    List<Spot> top = List.of(spot(0, 10, 100), spot(20, 10, 100));
    List<Spot> foot = List.of(spot(0, 12, 98), spot(20, 12, 98));
    List<Spot> around =
        List.of(spot(0, 0, 100), spot(20, 0, 100), spot(0, 30, 98), spot(20, 30, 98));
    Surface s = Surface.of(around, List.of(top, foot));
    assertEquals(100, s.level(Point.metres(9, 9.9)).metres(), 1e-9);
    assertEquals(99, s.level(Point.metres(9, 11)).metres(), 1e-9);
    assertEquals(98, s.level(Point.metres(11, 13)).metres(), 1e-9);
    assertEquals(1, s.slopeAt(Point.metres(9, 11)).get().ratio(), 1e-9);
  }

  @Test
  void of_twoLevelsAtOnePoint_isAContradiction() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                Surface.of(
                    List.of(spot(0, 0, 1), spot(5, 0, 1), spot(0, 5, 1), spot(0, 0, 2)),
                    List.of()));
    assertEquals(ProblemCode.CONTRADICTION, e.problems().get(0).code());
  }

  @Test
  void of_levelsOnOneLine_isRefused() {
    assertThrows(
        PlanException.class,
        () -> Surface.of(List.of(spot(0, 0, 1), spot(5, 0, 1), spot(9, 0, 1)), List.of()));
  }

  /** Level bed on a plane: both wedges are triangles of known volume. */
  @Test
  void levelBed_onASlope_cutsAndFillsEqualWedges() {
    Surface s =
        Surface.of(
            List.of(spot(0, 0, 10), spot(20, 0, 10), spot(0, 20, 12), spot(20, 20, 12)), List.of());
    Shape bed = Shape.rectangle(Point.metres(5, 5), Length.metres(8), Length.metres(4));
    Length level = LevelBed.balanced(s, bed);
    assertEquals(10.7, level.metres(), 1e-6);
    LevelBed moved = LevelBed.of(s, bed, level);
    // Each wedge: 8 m wide, 2 m long, 0.2 m deep at its end.
    assertEquals(8 * 2 * 0.2 / 2, moved.cut().cubicMetres(), 1e-5);
    assertEquals(8 * 2 * 0.2 / 2, moved.fill().cubicMetres(), 1e-5);
    assertEquals(0, moved.unknown().squareMetres(), 1e-6);
  }

  /** Rises a metre over ten from left to right. */
  private static Surface ramp() {
    return Surface.of(
        List.of(spot(0, 0, 0), spot(10, 0, 1), spot(10, 10, 1), spot(0, 10, 0)), List.of());
  }

  private static List<Double> levels(double interval, double base) {
    return Contours.of(ramp(), Length.metres(interval), Length.metres(base)).stream()
        .map(c -> Math.round(c.level().metres() * 1e6) / 1e6)
        .toList();
  }

  /** The lowest and the highest level are contours themselves; others count from the base. */
  @Test
  void contours_countFromTheBase_withBothEnds() {
    assertEquals(List.of(0.0, 0.2, 0.4, 0.6, 0.8, 1.0), levels(0.2, 0));
    assertEquals(List.of(0.0, 0.2, 0.4, 0.6, 0.8, 1.0), levels(0.2, 5));
    assertEquals(List.of(0.05, 0.35, 0.65, 0.95), levels(0.3, 0.05));
    assertEquals(List.of(0.0, 1.0), levels(1, 0));
    List<Contours.Contour> ends = Contours.of(ramp(), Length.metres(1), Length.ZERO);
    assertEquals(List.of(), ends.get(0).lines());
    assertEquals(10, ends.get(1).lines().get(0).length().metres(), 1e-9);
    assertEquals(10, ends.get(1).lines().get(0).start().x().metres(), 1e-9);
  }

  /** 500 steps are 501 contours, which is the most; one step more is told by its number. */
  @Test
  void contours_tooMany_areCounted() {
    assertEquals(501, levels(1 / 500.0, 0).size());
    PlanException e = assertThrows(PlanException.class, () -> levels(1 / 501.0, 0));
    assertTrue(e.getMessage().contains("gives 502 contours"), e.getMessage());
    assertThrows(PlanException.class, () -> levels(0, 0));
  }

  /**
   * Level at 0.3 on the ramp, 10 m wide: what is cut rises to 0.7 over 7 m, 24.5 m³; what is filled
   * sinks to 0.3 over 3 m, 4.5 m³. Half a metre lies beyond what is known: 5 m².
   */
  @Test
  void levelBed_offTheMiddle_cutsMoreThanItFills() {
    Shape bed = Shape.rectangle(Point.metres(0, 0), Length.metres(10.5), Length.metres(10));
    LevelBed found = LevelBed.of(ramp(), bed, Length.metres(0.3));
    assertEquals(24.5, found.cut().cubicMetres(), 1e-6);
    assertEquals(4.5, found.fill().cubicMetres(), 1e-6);
    assertEquals(5, found.unknown().squareMetres(), 1e-6);
    assertEquals(0.5, LevelBed.balanced(ramp(), bed).metres(), 1e-9);
  }

  /** Just at the highest and the lowest level nothing is left to cut, or to fill. */
  @Test
  void levelBed_atTheEnds_isAllOfOneKind() {
    Shape bed = Shape.rectangle(Point.metres(0, 0), Length.metres(10), Length.metres(10));
    LevelBed high = LevelBed.of(ramp(), bed, Length.metres(1));
    assertEquals(0, high.cut().cubicMetres(), 1e-9);
    assertEquals(50, high.fill().cubicMetres(), 1e-6);
    LevelBed low = LevelBed.of(ramp(), bed, Length.ZERO);
    assertEquals(50, low.cut().cubicMetres(), 1e-6);
    assertEquals(0, low.fill().cubicMetres(), 1e-9);
  }
}
