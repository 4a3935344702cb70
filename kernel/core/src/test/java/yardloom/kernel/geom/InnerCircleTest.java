package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;

/** Closed forms for circles, rings and rectangles; the library's search as a second method. */
class InnerCircleTest {
  /** A chord lies at most so far inside of its arc; the search ends within 1 mm. */
  private static final double WITHIN_M = Arc.SAGITTA.metres() + 0.001;

  @Test
  void disc_isItsOwnRadius() {
    assertEquals(2.7, inside(disc(3, 5, 2.7)), WITHIN_M);
  }

  @Test
  void ringAboutTheSameMiddle_isHalfTheDifferenceOfRadii() {
    // (4.1 − 0.6) / 2
    assertEquals(1.75, inside(disc(1, 2, 4.1).minus(disc(1, 2, 0.6))), WITHIN_M);
  }

  @Test
  void holeOffTheMiddle_leavesRoomOnTheFarSide() {
    // From the far end of the circle to the hole: 4 + 1.5 − 0.7 = 4.8, halved.
    assertEquals(2.4, inside(disc(0, 0, 4).minus(disc(1.5, 0, 0.7))), WITHIN_M);
  }

  @Test
  void rectangle_isHalfItsShortSide() {
    Shape bed = Shape.rectangle(Point.metres(1, 1), Length.metres(7), Length.metres(3));
    assertEquals(1.5, inside(bed), 0.001);
  }

  @Test
  void rightTriangle_isNotMeasuredAtItsCentroid() {
    // Sides 3, 4 and 5 m: (3 + 4 − 5) / 2 = 1 m; its centroid is 0.8 m off the long side.
    Shape triangle =
        Shape.polygon(List.of(Point.metres(0, 0), Point.metres(4, 0), Point.metres(0, 3)));
    assertEquals(1, inside(triangle), 0.001);
  }

  @Test
  void holeAtTheEndOfABed_leavesTheBedsWidth() {
    // A bed of 9 × 2 m with a hole of 0.5 m at one end holds a circle as wide as the bed.
    Shape bed = Shape.rectangle(Point.metres(0, 0), Length.metres(9), Length.metres(2));
    assertEquals(1, inside(bed.minus(disc(1, 1, 0.5))), 0.001);
  }

  @Test
  void squareHole_isSearchedForInTheCorner() {
    // A circle of radius r in a corner of a 6 m square reaches the corner of the middle 2 m square:
    // (2 − r) √2 = r, r = 2 √2 / (1 + √2) = 1.1716 m.
    Shape ring =
        Shape.rectangle(Point.metres(0, 0), Length.metres(6), Length.metres(6))
            .minus(Shape.rectangle(Point.metres(2, 2), Length.metres(2), Length.metres(2)));
    assertEquals(1.1716, inside(ring), 0.001);
  }

  @Property(tries = 60)
  void ringsOfAllKinds_areWhatTheSearchFinds(
      @ForAll @DoubleRange(min = 0.5, max = 6) double outerM,
      @ForAll @DoubleRange(min = 0.05, max = 0.6) double share,
      @ForAll @DoubleRange(min = 0, max = 0.9) double off) {
    double holeM = outerM * share;
    Shape ring = disc(0, 0, outerM).minus(disc(off * (outerM - holeM), 0, holeM));
    assertEquals(InnerCircle.searched(ring.jts()), inside(ring), 0.002);
  }

  private static double inside(Shape shape) {
    return shape.inside().metres();
  }

  private static Shape disc(double xM, double yM, double radiusM) {
    return Shape.circle(Point.metres(xM, yM), Length.metres(radiusM));
  }
}
