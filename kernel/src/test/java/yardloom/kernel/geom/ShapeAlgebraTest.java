package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
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
}
