package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

class SightTriangleTest {
  private static Point ft(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }

  /** Z-12, Z-13: ½ a b sin θ; the leg pairs are those of Z-03, Z-05 and Z-07. */
  @ParameterizedTest
  @CsvSource({
    "25, 25, 90, 312.5, 1e-6",
    "30, 30, 90, 450, 1e-6",
    "10, 70, 90, 350, 1e-6",
    "50, 50, 90, 1250, 1e-6",
    "25, 25, 75, 301.852, 1e-3"
  })
  void of_corner_hasTheTriangleArea(
      double legA, double legB, double angleDeg, double areaFt2, double tolerance) {
    double a = Math.toRadians(angleDeg);
    // The first side comes to the corner at the origin, the second leads away from it.
    Line first = Line.between(ft(-100, 0), ft(0, 0));
    Line second = Line.between(ft(0, 0), ft(-100 * Math.cos(a), 100 * Math.sin(a)));
    Shape triangle =
        Shape.polygon(
            SightTriangle.corners(
                first, second, Length.feet(legA), Length.feet(legB), Length.ZERO));
    assertEquals(areaFt2, triangle.area().squareFeet(), tolerance);
    assertTrue(triangle.distance(ft(-legA, 0)).feet() < 1e-6);
  }

  /** Z-06: measured along the curb, outside of the lot line; less of it lies on the lot. */
  @Test
  void of_curbDatum_movesTheCornerOut() {
    Line first = Line.between(ft(-100, 0), ft(0, 0));
    Line second = Line.between(ft(0, 0), ft(0, 100));
    Shape lot = Shape.rectangle(ft(-100, 0), Length.feet(100), Length.feet(100));
    Shape triangle =
        Shape.polygon(
            SightTriangle.corners(first, second, Length.feet(30), Length.feet(30), Length.feet(8)));
    assertEquals(450, triangle.area().squareFeet(), 1e-6);
    assertEquals(14 * 14 / 2.0, triangle.and(lot).area().squareFeet(), 1e-4);
  }

  /** A rounded corner: the legs still start where the straight lines meet. */
  @Test
  void of_sidesThatDoNotTouch_meetAtTheExtendedCorner() {
    Line first = Line.between(ft(-100, 0), ft(-20, 0));
    Line second = Line.between(ft(0, 20), ft(0, 100));
    Shape triangle =
        Shape.polygon(
            SightTriangle.corners(first, second, Length.feet(25), Length.feet(25), Length.ZERO));
    assertEquals(312.5, triangle.area().squareFeet(), 1e-6);
    assertTrue(triangle.distance(ft(0, 0)).feet() < 1e-6);
  }

  @Test
  void of_parallelSides_isRefused() {
    Line first = Line.between(ft(-100, 0), ft(0, 0));
    assertThrows(
        PlanException.class,
        () ->
            SightTriangle.corners(
                first, first.reversed(), Length.feet(25), Length.feet(25), Length.ZERO));
  }
}
