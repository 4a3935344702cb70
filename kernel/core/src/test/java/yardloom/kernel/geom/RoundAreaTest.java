package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;

/** Round shapes have the area of the circle. Source: area of a circle, πr². */
class RoundAreaTest {
  /** π × 15² = 706.858 sq ft. */
  @Test
  void circle_fifteenFeet_is706Point86SquareFeet() {
    Shape round = Shape.circle(Point.metres(3, 4), Length.feet(15));
    assertEquals(706.858, round.area().squareFeet(), 0.0005);
  }

  @Property(tries = 200)
  void circleAndRing_ofAnySize_haveTheAreaOfTheArc(
      @ForAll @DoubleRange(min = 0.05, max = 300) double radiusM,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double hole,
      @ForAll @DoubleRange(min = -500, max = 500) double x) {
    Point centre = Point.metres(x, -x / 3);
    Shape round = Shape.circle(centre, Length.metres(radiusM));
    Shape ring = round.minus(Shape.circle(centre, Length.metres(radiusM * hole)));
    double area = Math.PI * radiusM * radiusM;
    assertEquals(area, round.area().squareMetres(), area * 1e-5 + 1e-6);
    assertEquals(area * (1 - hole * hole), ring.area().squareMetres(), area * 1e-5 + 2e-6);
  }

  @Property(tries = 100)
  void circle_ofAnySize_keepsToTheArcWithinTheSagitta(
      @ForAll @DoubleRange(min = 0.05, max = 300) double radiusM) {
    Point centre = Point.metres(0, 0);
    double sagitta = Arc.SAGITTA.metres();
    for (Point corner : Shape.circle(centre, Length.metres(radiusM)).corners()) {
      double out = corner.distance(centre).metres() - radiusM;
      assertTrue(out > 0 && out < sagitta * 0.7, "corner " + out + " m outside");
    }
  }
}
