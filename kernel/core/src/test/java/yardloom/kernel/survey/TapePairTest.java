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
}
