package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

class ShapeAlgebraTest {
  private static final Shape L =
      Shape.polygon(
          List.of(
              Point.metres(0, 0),
              Point.metres(20, 0),
              Point.metres(20, 10),
              Point.metres(10, 10),
              Point.metres(10, 20),
              Point.metres(0, 20)));

  /** Each of the five outer corners loses r²(1 − π/4), the inner one gains it. */
  @Test
  void rounded_lShape_losesAndGainsTheFillets() {
    double r = 1;
    double fillet = r * r * (1 - Math.PI / 4);
    assertEquals(300 - 4 * fillet, L.rounded(Length.metres(r)).area().squareMetres(), 0.01);
    assertThrows(PlanException.class, () -> L.rounded(Length.metres(6)));
  }

  @Test
  void sides_ofAnL_areTheLongestFacingRuns() {
    assertEquals(20, L.south().length().metres(), 1e-9);
    assertEquals(20, L.west().length().metres(), 1e-9);
    assertEquals(10, L.north().length().metres(), 1e-9);
    // Outside is on the left: southwards of the south side.
    Shape outside = PathStrip.leftOf(L.south(), Length.ZERO, Length.metres(1));
    assertTrue(!outside.overlaps(L));
    assertThrows(
        PlanException.class,
        () ->
            Shape.polygon(List.of(Point.metres(0, 0), Point.metres(4, 0), Point.metres(0, 1)))
                .east());
  }

  @Test
  void nearest_outsidePoint_isOnTheEdge() {
    assertEquals(Point.metres(20, 5), L.nearest(Point.metres(33, 5)));
    assertEquals(Point.metres(3, 3), L.nearest(Point.metres(3, 3)));
  }

  @Test
  void line_atAndMiddle_measureAlongIt() {
    Line line =
        Line.through(List.of(Point.metres(0, 0), Point.metres(10, 0), Point.metres(10, 10)));
    assertEquals(Point.metres(10, 5), line.at(Length.metres(15)));
    assertEquals(Point.metres(10, 0), line.middle());
    assertThrows(PlanException.class, () -> line.at(Length.metres(21)));
    Point turned = line.turned(Angle.degrees(90), Point.metres(0, 0)).end();
    assertEquals(-10, turned.x().metres(), 1e-9);
    assertEquals(10, turned.y().metres(), 1e-9);
  }

  @Test
  void outline_ofAShape_isClosedAndAsLongAsItsPerimeter() {
    assertTrue(L.outline().isClosed());
    assertEquals(L.perimeter().metres(), L.outline().length().metres(), 1e-9);
    assertEquals(20, L.width().metres(), 1e-12);
    assertEquals(20, L.depth().metres(), 1e-12);
  }

  /** Reflection in the line through two points, by hand: the line is y = x, swapping x and y. */
  @Test
  void mirrored_inTheDiagonal_swapsTheAxes() {
    Point a = Point.metres(0, 0);
    Point b = Point.metres(5, 5);
    assertEquals(0, Point.metres(3, 1).mirrored(a, b).distance(Point.metres(1, 3)).metres(), 1e-9);
    Line line = Line.between(Point.metres(2, 0), Point.metres(7, 1)).mirrored(a, b);
    assertEquals(0, line.start().distance(Point.metres(0, 2)).metres(), 1e-9);
    assertEquals(0, line.end().distance(Point.metres(1, 7)).metres(), 1e-9);
    assertThrows(PlanException.class, () -> Point.metres(3, 1).mirrored(a, a));
  }

  @Test
  void lineStrip_withGapAndDepth_liesOnTheLeft() {
    Line line = Line.between(Point.metres(0, 0), Point.metres(10, 0));
    Shape strip = line.strip(Length.metres(0.5), Length.metres(2));
    assertEquals(20, strip.area().squareMetres(), 1e-9);
    assertEquals(0.5, strip.bounds().getMinY(), 1e-9);
    assertEquals(2.5, strip.bounds().getMaxY(), 1e-9);
    assertEquals(Point.metres(4, 0), line.nearest(Point.metres(4, 3)));
    assertEquals(Point.metres(10, 0), line.nearest(Point.metres(12, -3)));
  }

  @Test
  void side_byName_isTheCompassSide() {
    assertEquals(L.south(), L.side("south"));
    PlanException e = assertThrows(PlanException.class, () -> L.side("front"));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
  }

  private static String refusal(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(Point.metres(xy[i], xy[i + 1]));
    }
    PlanException e = assertThrows(PlanException.class, () -> Shape.polygon(corners));
    return e.problems().get(0).message();
  }

  @Test
  void polygon_cornersOnOneLine_isToldSo() {
    String told = "the outline has no area; its corners lie on one line";
    assertEquals(told, refusal(0, 0, 5, 5, 10, 10));
    assertEquals(told, refusal(0, 0, 10, 0, 5, 0, 2, 0));
    assertEquals(told, refusal(3, 3, 3, 3, 3, 3));
  }

  @Test
  void polygon_tooSmall_isToldItsSize() {
    assertEquals(
        "the outline is 1.00 mm (0.0394 in) by 1.00 mm (0.0394 in) and encloses no more than 1 mm²;"
            + " check its unit",
        refusal(0, 0, 0.001, 0, 0.001, 0.001, 0, 0.001));
  }

  @Test
  void polygon_figureOfEight_isToldThatItCrosses() {
    String told = refusal(0, 0, 10, 10, 10, 0, 0, 10);
    assertTrue(
        told.startsWith("the outline crosses or touches itself near (5.00 m, 5.00 m)"), told);
  }

  @Test
  void polygon_beyondAllMeasure_isToldInFewDigits() {
    assertEquals(
        "the corner (1.00e+300 m, 0.00 m) = (3.28e+300 ft, 0.00 ft) lies more than 100,000 km from"
            + " the plan's origin; check its unit",
        refusal(0, 0, 1e300, 0, 0, 1));
  }
}
