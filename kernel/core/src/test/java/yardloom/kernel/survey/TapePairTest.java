package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

class TapePairTest {
  private static Point p(double xM, double yM) {
    return Point.metres(xM, yM);
  }

  /** Euclid, Elements I.47 with the sides 3, 4, 5, and twice as long 6, 8, 10. */
  @Test
  void tapes_pythagoreanTriangles_areTheirSides() {
    TapePair pair = new TapePair(p(0, 0), p(4, 0));
    assertEquals(3, pair.a().distance(p(0, 3)).metres(), 1e-12);
    assertEquals(5, pair.b().distance(p(0, 3)).metres(), 1e-12);
    assertEquals(10, pair.a().distance(p(-6, -8)).metres(), 1e-12);
  }

  /** Thales: the angle in a semicircle is a right angle; in the 3-4-5 triangle atan(4/3). */
  @Test
  void crossing_knownTriangles_isTheAngleAtThePoint() {
    TapePair pair = new TapePair(p(-5, 0), p(5, 0));
    assertEquals(90, pair.crossing(p(3, 4)).degrees(), 1e-9);
    assertEquals(90, pair.crossing(p(3, -4)).degrees(), 1e-9);
    assertEquals(180, pair.crossing(p(1, 0)).degrees(), 1e-9);
    assertEquals(0, pair.crossing(p(9, 0)).degrees(), 1e-9);
    assertEquals(53.130102354, new TapePair(p(0, 0), p(4, 0)).crossing(p(0, 3)).degrees(), 1e-8);
  }

  /** An isosceles triangle on a base of 1 has 30 degrees at its tip when 0.5 / tan 15° high. */
  @Test
  void crossesWell_onBothSidesOf30Degrees_changes() {
    TapePair pair = new TapePair(p(-0.5, 0), p(0.5, 0));
    double height = 0.5 / Math.tan(Math.toRadians(15));
    assertTrue(pair.crossesWell(p(0, height - 0.001)));
    assertTrue(!pair.crossesWell(p(0, height + 0.001)));
    assertTrue(!pair.crossesWell(p(0, 0.13)), "more than 150 degrees");
  }

  @Test
  void side_seenFromAToB_isLeftAboveALineToTheRight() {
    TapePair pair = new TapePair(p(0, 0), p(10, 0));
    assertEquals(TapePair.Side.LEFT, pair.side(p(3, 1)));
    assertEquals(TapePair.Side.RIGHT, pair.side(p(3, -1)));
    assertEquals(TapePair.Side.ON, pair.side(p(30, 0.004)));
  }

  /** From the front corners the house hides the yard behind; from the rear ones it does not. */
  @Test
  void best_houseBetween_takesTheCornersThatSeeTheYard() {
    List<Point> corners = List.of(p(0, 0), p(0, 8), p(10, 0), p(10, 8));
    List<Point> yard = List.of(p(2, 15), p(8, 15));
    assertEquals(
        Optional.of(new TapePair(p(0, 8), p(10, 8))),
        TapePair.best(corners, yard, (from, to) -> from.y().metres() > 7));
  }

  /** Far away a long base crosses better than a short one. */
  @Test
  void best_farPoint_takesTheLongBase() {
    List<Point> fixed = List.of(p(0, 0), p(2, 0), p(12, 0));
    assertEquals(
        Optional.of(new TapePair(p(0, 0), p(12, 0))),
        TapePair.best(fixed, List.of(p(6, 15)), (from, to) -> true));
  }

  @Test
  void best_nothingToMeasureFrom_isEmpty() {
    List<Point> near = List.of(p(0, 0), p(0.5, 0));
    assertEquals(Optional.empty(), TapePair.best(near, List.of(p(1, 5)), (from, to) -> true));
    assertEquals(
        Optional.empty(), TapePair.best(List.of(p(0, 0), p(9, 0)), List.of(), (f, t) -> true));
  }

  @Test
  void pair_onePointTwice_isRefused() {
    assertThrows(PlanException.class, () -> new TapePair(p(1, 1), p(1, 1)));
  }

  /** The tapes and the side lead a crew back to the point: the way of trilateration. */
  @Property(seed = "20261125")
  void tapesAndSide_putIntoTheTapeFix_giveThePointBack(
      @ForAll @DoubleRange(min = -40, max = 40) double bx,
      @ForAll @DoubleRange(min = -40, max = 40) double by,
      @ForAll @DoubleRange(min = -40, max = 40) double x,
      @ForAll @DoubleRange(min = -40, max = 40) double y) {
    Assume.that(Math.hypot(bx, by) >= 1);
    TapePair pair = new TapePair(p(0, 0), p(bx, by));
    Point at = p(x, y);
    Assume.that(pair.crossesWell(at) && pair.side(at) != TapePair.Side.ON);
    Length off = Length.metres(pair.side(at) == TapePair.Side.LEFT ? 1 : -1);
    Point near = new Baseline(pair.a(), pair.b()).at(Length.ZERO, off);
    TapeFix fix =
        TapeFix.of(
            List.of(
                new TapeFix.Tape("A", pair.a(), pair.a().distance(at), TapeFix.USUAL_ERROR),
                new TapeFix.Tape("B", pair.b(), pair.b().distance(at), TapeFix.USUAL_ERROR)),
            Optional.of(near));
    assertEquals(0, fix.at().distance(at).metres(), 0.001);
  }

  private static Optional<TapePair> best(Point... fixed) {
    return TapePair.best(List.of(fixed), List.of(p(0, 0)), (from, to) -> true);
  }

  /** Seen from the middle: 45° apart two and two, 90° the outer ones, which are best. */
  @Test
  void best_ofPairsThatReachAsMany_crossesMostSquarely() {
    Point a = p(10, 0);
    Point b = p(10 / Math.sqrt(2), 10 / Math.sqrt(2));
    Point c = p(0, 10);
    assertEquals(Optional.of(new TapePair(a, c)), best(a, b, c));
    assertEquals(Optional.of(new TapePair(c, a)), best(b, c, a));
    assertEquals(Optional.of(new TapePair(a, c)), best(a, c, b));
  }

  /** As square from 10 as from 20 m: the longer; as long on both sides: the first. */
  @Test
  void best_ofPairsAsSquare_isTheLongest_thenTheFirst() {
    Point a = p(10, 0);
    Point near = p(0, 10);
    Point far = p(0, 20);
    assertEquals(Optional.of(new TapePair(a, far)), best(a, near, far));
    assertEquals(Optional.of(new TapePair(a, far)), best(a, far, near));
    Point below = p(0, -10);
    assertEquals(Optional.of(new TapePair(a, near)), best(a, near, below));
    assertEquals(Optional.of(new TapePair(a, below)), best(a, below, near));
  }

  /**
   * Two points at 68.6° count for more than one at 90°, which the third fixed point sees alone; the
   * worse of two crossings decides.
   */
  @Test
  void best_reachesTheMost() {
    Point a = p(-5, -10);
    Point b = p(9, -10);
    Point c = p(-10, 5);
    List<Point> targets = List.of(p(0, 0), p(4, 0));
    assertEquals(
        Optional.of(new TapePair(a, b)),
        TapePair.best(
            List.of(a, c, b), targets, (from, to) -> !from.equals(c) || to.equals(targets.get(0))));
    // From (0, 20) and (20, 0) the middle has 90°, but (9, 9) 143°; from a and b both 68.6° before.
    assertEquals(
        Optional.of(new TapePair(p(0, 20), p(-8, 0))),
        TapePair.best(
            List.of(p(0, 20), p(20, 0), p(-8, 0)), List.of(p(0, 0), p(9, 9)), (f, t) -> true));
  }

  /** Limits are kept: a metre between the fixed points, 5 mm off the line. */
  @Test
  void limits_areStillWithin() {
    assertEquals(
        Optional.of(new TapePair(p(0, 0), p(1, 0))),
        TapePair.best(List.of(p(0, 0), p(1, 0)), List.of(p(0.5, 1)), (from, to) -> true));
    TapePair pair = new TapePair(p(0, 0), p(10, 0));
    assertEquals(TapePair.Side.ON, pair.side(p(5, 0.005)));
    assertEquals(TapePair.Side.ON, pair.side(p(5, -0.005)));
    assertEquals(TapePair.Side.LEFT, pair.side(p(5, 0.0051)));
  }
}
