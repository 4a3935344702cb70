package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.built.formula.FenceParts;
import yardloom.materials.built.formula.FenceParts.Opening;
import yardloom.materials.built.formula.FenceParts.Runs;
import yardloom.materials.built.formula.WallParts;
import yardloom.materials.goods.formula.FramePieces;
import yardloom.materials.goods.formula.Lumber;
import yardloom.materials.goods.formula.Pavers;
import yardloom.materials.goods.formula.TrellisParts;
import yardloom.materials.mulch.formula.MulchLimits;
import yardloom.materials.mulch.formula.MulchLimits.Verdict;
import yardloom.materials.mulch.formula.Settling;
import yardloom.materials.surface.formula.Cardboard;
import yardloom.materials.surface.formula.TaperedLayer;

/** Formulas at the edges of what they hold for; all by hand arithmetic, shown beside. */
class FormulaEdgesTest {
  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(Point.metres(x, y), m(width), m(depth));
  }

  private static Line line(double... xy) {
    List<Point> points = new java.util.ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(Point.metres(xy[i], xy[i + 1]));
    }
    return Line.through(points);
  }

  private static List<Double> along(Runs runs) {
    return runs.posts().stream().map(p -> Math.round(p.x().metres() * 1000) / 1000.0).toList();
  }

  /** 20 m with gates from 4 to 5 m and from 4.5 to 7 m, which are one from 4 to 7 m. */
  @Test
  void fence_gatesThatOverlap_areOne() {
    Runs runs =
        FenceParts.runs(
            line(0, 0, 20, 0), m(2.5), List.of(new Opening(m(4), m(5)), new Opening(m(4.5), m(7))));
    // 4 m in two bays of 2 m; 13 m in six of 13/6 m.
    assertEquals(
        List.of(0.0, 2.0, 4.0, 7.0, 9.167, 11.333, 13.5, 15.667, 17.833, 20.0), along(runs));
    assertEquals(8, runs.bays());
    assertEquals(17, runs.length().metres(), 1e-9);
  }

  /** A gate at the very end has a post of its own there; one at the begin too. */
  @Test
  void fence_gatesAtItsEnds_haveTheirPosts() {
    Runs runs =
        FenceParts.runs(
            line(0, 0, 10, 0), m(3), List.of(new Opening(m(0), m(1)), new Opening(m(8), m(10))));
    // Between 1 m and 8 m three bays of 7/3 m.
    assertEquals(List.of(0.0, 1.0, 3.333, 5.667, 8.0, 10.0), along(runs));
    assertEquals(3, runs.bays());
    assertEquals(7, runs.length().metres(), 1e-9);
    // A gate within a longer one adds nothing, and less than a centimetre is no run.
    Runs within =
        FenceParts.runs(
            line(0, 0, 10, 0),
            m(3),
            List.of(new Opening(m(2), m(6)), new Opening(m(3), m(4)), new Opening(m(6.005), m(7))));
    assertEquals(List.of(0.0, 2.0, 6.0, 7.0, 10.0), along(within));
    assertEquals(2, within.bays());
    assertEquals(5, within.length().metres(), 1e-9);
  }

  @Test
  void fence_closedOrOpen_countsItsBays() {
    Runs open = FenceParts.runs(line(0, 0, 4, 0, 4, 3), m(2), List.of());
    assertEquals(5, open.posts().size(), "4 m in two, 3 m in two, and the end");
    assertEquals(4, open.bays());
    Runs closed = FenceParts.runs(line(0, 0, 4, 0, 4, 3, 0, 0), m(2), List.of());
    assertEquals(2 + 2 + 3, closed.posts().size(), "the third side of 5 m in three");
    assertEquals(7, closed.bays());
    assertEquals(12, closed.length().metres(), 1e-9);
  }

  /** Three rails above 4 ft; half of the height in the ground, 2 ft at least. */
  @Test
  void fence_railsBoardsAndConcrete() {
    assertEquals(2, FenceParts.rails(Length.feet(4)));
    assertEquals(3, FenceParts.rails(Length.feet(4.01)));
    assertEquals(2, FenceParts.buried(Length.feet(3.9)).feet(), 1e-9);
    assertEquals(2.5, FenceParts.buried(Length.feet(5)).feet(), 1e-9);
    assertEquals(20, FenceParts.boards(m(3), 0, m(0.15)), "a whole number needs none more");
    assertEquals(15, FenceParts.boards(m(3), 0.25, m(0.15)), "20 · 0.75");
    // π · 0.15² − 0.1² = 0.060686 m², 0.8 m deep.
    assertEquals(
        (Math.PI * 0.0225 - 0.01) * 0.8,
        FenceParts.concrete(m(0.3), m(0.1), m(0.8)).cubicMetres(),
        1e-12);
  }

  /** 1 m of 0.15 m courses are seven, and one below the ground: 1.2 m. */
  @Test
  void wall_isBuiltFromBelowTheGround() {
    assertEquals(7, WallParts.courses(m(1), m(0.15)));
    assertEquals(6, WallParts.courses(m(0.9), m(0.15)));
    assertEquals(1.2, WallParts.whole(m(1), m(0.15)).metres(), 1e-9);
    assertEquals(4, WallParts.along(m(1.2), m(0.3)));
    assertEquals(5, WallParts.along(m(1.21), m(0.3)));
    // 6 in are 0.1524 m, 12 in 0.3048 m; the trench is twice as wide as the wall.
    assertEquals(5 * 0.5 * 0.1524, WallParts.base(m(5), m(0.25)).cubicMetres(), 1e-12);
    assertEquals(5 * 0.8 * 0.3048, WallParts.drain(m(5), m(0.8)).cubicMetres(), 1e-12);
  }

  @Test
  void trellis_postsStandAtBendsAndBetween() {
    assertEquals(4, TrellisParts.posts(line(0, 0, 6, 0), m(2)), "0, 2, 4 and 6 m");
    List<Point> places = TrellisParts.places(line(1, 1, 4, 5), m(3));
    // 5 m in two: the middle at (2.5, 3).
    assertEquals(2.5, places.get(1).x().metres(), 1e-9);
    assertEquals(3, places.get(1).y().metres(), 1e-9);
    assertEquals(3, places.size());
    assertEquals(3 * 7 * 1.1, TrellisParts.wire(line(0, 0, 7, 0), 3).metres(), 1e-9);
  }

  @Test
  void pavers_ofNoSizeOrWaste_areRefused() {
    assertEquals(50, Pavers.exact(box(0, 0, 2, 1).area(), m(0.2), m(0.2)), 1e-9);
    assertEquals(50, Pavers.order(box(0, 0, 2, 1).area(), m(0.2), m(0.2), 0));
    assertEquals(54, Pavers.order(box(0, 0, 2, 1).area(), m(0.2), m(0.2), 0.07), "53.5");
    assertEquals(100, Pavers.order(box(0, 0, 2, 1).area(), m(0.2), m(0.2), 1));
    for (double waste : List.of(-0.01, 1.01, Double.NaN)) {
      assertThrows(
          PlanException.class, () -> Pavers.order(box(0, 0, 2, 1).area(), m(0.2), m(0.2), waste));
    }
    assertThrows(PlanException.class, () -> Pavers.exact(box(0, 0, 2, 1).area(), m(0), m(0.2)));
    assertThrows(PlanException.class, () -> Pavers.exact(box(0, 0, 2, 1).area(), m(0.2), m(0)));
    assertEquals(4, Pavers.Traffic.FOOT.base().inches(), 1e-9);
    assertEquals(6, Pavers.Traffic.DRIVE.base().inches(), 1e-9);
  }

  private static List<Double> frame(Shape outline, double thickness, double stock) {
    return FramePieces.of(outline, m(thickness), m(stock)).stream()
        .map(l -> Math.round(l.metres() * 1000) / 1000.0)
        .toList();
  }

  /** 3 m by 1.2 m of 4 cm boards: ends of 1.2 − 0.08; stock of 2 m parts each side in two. */
  @Test
  void frame_ofARectangle_hasItsEndsBetweenTheSides() {
    assertEquals(List.of(3.0, 1.12, 3.0, 1.12), frame(box(1, 2, 3, 1.2), 0.04, 4));
    assertEquals(List.of(1.5, 1.5, 1.12, 1.5, 1.5, 1.12), frame(box(1, 2, 3, 1.2), 0.04, 2));
    assertEquals(List.of(2.0, 1.12, 2.0, 1.12), frame(box(1, 2, 2, 1.2), 0.04, 2), "whole");
    assertEquals(List.of(3.0, 3.0), frame(box(1, 2, 3, 0.08), 0.04, 4), "nothing between");
  }

  /** An L has its six sides at full length; a frame about a hole that of the hole too. */
  @Test
  void frame_ofOtherOutlines_hasAllSides() {
    Shape corner = box(0, 0, 4, 3).minus(box(2.5, 1, 1.5, 2));
    assertEquals(
        List.of(1.0, 1.5, 2.0, 2.5, 3.0, 4.0), frame(corner, 0.04, 5).stream().sorted().toList());
    Shape ring = box(0, 0, 4, 3).minus(box(1, 1, 0.5, 0.7));
    assertEquals(
        List.of(0.5, 0.5, 0.7, 0.7, 3.0, 3.0, 4.0, 4.0),
        frame(ring, 0.04, 5).stream().sorted().toList());
    assertEquals(
        List.of(0.7, 0.7, 3.0, 3.0, 4.0, 4.0),
        frame(ring, 0.5, 5).stream().sorted().toList(),
        "no side as short as the board is thick");
  }

  @Test
  void frame_hasScrewsAndStakes() {
    assertEquals(2, FramePieces.screwsPerCorner(3));
    assertEquals(3, FramePieces.screwsPerCorner(6));
    assertEquals(4, FramePieces.screwsPerCorner(7));
    // 8 ft two, 9 ft three, 3 ft one.
    assertEquals(6, FramePieces.stakes(List.of(Length.feet(8), Length.feet(9), Length.feet(3))));
    assertEquals(2 * 6 * 10 / 12.0, Lumber.size("2x6").boardFeet(Length.feet(10)), 1e-9);
  }

  /** A(0) = 20, A(w/2) = 4.5 · 3.5 = 15.75, A(w) = 4 · 3 = 12: 0.3 (20 + 63 + 12) / 6 = 4.75. */
  @Test
  void taperedLayer_isThePrismoid() {
    assertEquals(4.75, TaperedLayer.volume(box(0, 0, 5, 4), m(0.3), m(0.5)).cubicMetres(), 1e-6);
    assertEquals(6, TaperedLayer.volume(box(0, 0, 5, 4), m(0.3), m(0)).cubicMetres(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "1.9, true, TOO_LITTLE",
    "2, true, GOOD",
    "3, true, GOOD",
    "3.1, true, TOO_MUCH",
    "2.9, false, TOO_LITTLE",
    "3, false, GOOD",
    "4, false, GOOD",
    "4.1, false, TOO_MUCH"
  })
  void chipsAboutTrees_areTwoToThreeInchesOnHeavySoil_threeToFourElse(
      double inches, boolean heavy, Verdict verdict) {
    assertEquals(verdict, MulchLimits.aroundTree(Length.inches(inches), heavy));
  }

  @Test
  void gaps_areSixInchesAtTrunks_twelveAtWalls() {
    assertTrue(MulchLimits.trunkGapIsEnough(Length.inches(6)));
    assertTrue(!MulchLimits.trunkGapIsEnough(Length.inches(5.9)));
    assertTrue(MulchLimits.wallGapIsEnough(Length.inches(12)));
    assertTrue(!MulchLimits.wallGapIsEnough(Length.inches(11.9)));
  }

  /** 10 m³ that lose 40 %: 4, 2, 1, 0.5 m³. */
  @Test
  void settling_halvesEachYear_betweenItsLimits() {
    Volume laid = Volume.cubicMetres(10);
    for (int year = 1; year <= 4; year++) {
      assertEquals(
          4 / Math.pow(2, year - 1), Settling.addedInYear(year, laid, 0.4).cubicMetres(), 1e-12);
    }
    assertEquals(0, Settling.addedInYear(1, laid, 0).cubicMetres(), 0);
    assertEquals(9, Settling.addedInYear(1, laid, 0.9).cubicMetres(), 1e-12);
    assertEquals(9 / Math.pow(2, 30), Settling.addedInYear(40, laid, 0.9).cubicMetres(), 1e-18);
    assertThrows(PlanException.class, () -> Settling.addedInYear(0, laid, 0.4));
    assertThrows(PlanException.class, () -> Settling.addedInYear(1, laid, 0.91));
    assertThrows(PlanException.class, () -> Settling.addedInYear(1, laid, -0.01));
  }

  /**
   * Sheets of 1.2 m by 0.8 m that lap by 0.2 m cover 1.0 by 0.6 m: 3.2 m by 2 m take (3.2 − 0.2) /
   * 1 = 3 by (2 − 0.2) / 0.6 = 3, the other way 5 by 2.
   */
  @Test
  void cardboard_isLaidTheBetterWay() {
    assertEquals(9, Cardboard.byGrid(m(3.2), m(2), m(1.2), m(0.8), m(0.2)));
    // Turned: 2 m by 3.2 m the same. 3.2 by 1.2 m: 3 by 2 = 6 or 5 by 1 = 5.
    assertEquals(9, Cardboard.byGrid(m(2), m(3.2), m(1.2), m(0.8), m(0.2)));
    assertEquals(5, Cardboard.byGrid(m(3.2), m(1.2), m(1.2), m(0.8), m(0.2)));
    assertEquals(1, Cardboard.byGrid(m(0.1), m(0.1), m(1.2), m(0.8), m(0.2)));
    assertEquals(0.6, Cardboard.effectiveArea(m(1.2), m(0.8), m(0.2)).squareMetres(), 1e-12);
    assertEquals(10, Cardboard.byArea(box(0, 0, 3, 2).area(), m(1.2), m(0.8), m(0.2)), "6 / 0.6");
    assertEquals(0.96, Cardboard.effectiveArea(m(1.2), m(0.8), m(0)).squareMetres(), 1e-12);
    assertThrows(PlanException.class, () -> Cardboard.effectiveArea(m(1.2), m(0.8), m(-0.01)));
    assertThrows(PlanException.class, () -> Cardboard.effectiveArea(m(1.2), m(0.8), m(0.8)));
    assertThrows(PlanException.class, () -> Cardboard.byGrid(m(3), m(2), m(1.2), m(0.8), m(0.8)));
  }
}
