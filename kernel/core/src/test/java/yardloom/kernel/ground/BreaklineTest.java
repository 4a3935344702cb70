package yardloom.kernel.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

/** A long edge in the ground, with levels close beside it. */
class BreaklineTest {
  private static Spot spot(double x, double y, double level) {
    return new Spot(Point.metres(x, y), Length.metres(level));
  }

  /**
   * The edge rises by 3 m on 10 m, in two even pieces of 7 and 3 m; heaps of 5 m lie half a metre
   * to each side of it, so near that triangles between measured levels alone would cross it. Along
   * the edge the ground is at 1 + 0.3 x all the same.
   */
  @Test
  void ground_alongABreakline_isItsOwn() {
    Surface ground =
        Surface.of(
            List.of(spot(5, 0.5, 5), spot(5, -0.5, 5), spot(2, 0.4, 5), spot(2.5, -0.6, 5)),
            List.of(List.of(spot(0, 0, 1), spot(7, 0, 3.1), spot(10, 0, 4))));
    for (double x : new double[] {0, 1, 2.3, 3, 5, 6.9, 7, 8, 10}) {
      assertEquals(1 + 0.3 * x, ground.level(Point.metres(x, 0)).metres(), 1e-6, "at " + x);
    }
    // The five outermost points: the ends and the heaps about them, by the shoelace formula
    // (0,0) (2.5,−0.6) (5,−0.5) (10,0) (5,0.5) (2,0.4): 2 A = 0 + (−1.25 + 3) + (0 + 5) + (5 − 0)
    // + (2 − 1) + 0 = 12.75.
    assertEquals(12.75 / 2, ground.extent().area().squareMetres(), 1e-9);
    assertTrue(ground.levelAt(Point.metres(5, 0.51)).isEmpty());
    assertTrue(ground.levelAt(Point.metres(5, 0.49)).isPresent());
  }

  /** 3.28 ft are 1 m, 13.12 ft 4 m; a millimetre is no contradiction. */
  @Test
  void levelsOfABreakline_agreeWithThoseOfPoints() {
    List<Spot> points = List.of(spot(0, 0, 1), spot(4, 0, 2), spot(0, 4, 3));
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> Surface.of(points, List.of(List.of(spot(4, 0, 2.002), spot(4, 4, 4)))));
    assertTrue(
        e.getMessage().contains("(4.00 m = 13.12 ft, 0.00 m = 0.00 ft) has two levels, 2.00 m ="),
        e.getMessage());
    Surface.of(points, List.of(List.of(spot(4, 0, 2.0009), spot(4, 4, 4))));
  }
}
