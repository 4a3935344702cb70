package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Which outlines are rectangles. Source: plane geometry, worked beside each value. */
class RectangleSidesTest {
  private static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(depth));
  }

  private static Shape feet(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(Length.feet(xy[i]), Length.feet(xy[i + 1])));
    }
    return Shape.polygon(corners);
  }

  /**
   * The strip of a path has a point more at each end of its line: 36 by 3 ft, one row of sheets.
   */
  @Test
  void rectangle_withPointsOnItsSides_isStillOne_anythingElseIsNot() {
    RectangleSides path = RectangleSides.of(feet(0, 0, 36, 0, 36, 1.5, 36, 3, 0, 3, 0, 1.5)).get();
    assertEquals(36, path.length().feet(), 1e-9);
    assertEquals(3, path.width().feet(), 1e-9);
    assertTrue(RectangleSides.of(feet(0, 0, 36, 0, 36, 1.5, 35, 3, 0, 3)).isEmpty());
    assertTrue(RectangleSides.of(feet(0, 0, 36, 0, 33, 3, 3, 3)).isEmpty());
    assertTrue(RectangleSides.of(feet(0, 0, 36, 0, 18, 3)).isEmpty());
    Shape frame = feet(0, 0, 36, 0, 36, 9, 0, 9).minus(feet(3, 3, 5, 3, 5, 5, 3, 5));
    assertTrue(RectangleSides.of(frame).isEmpty());
  }

  @Test
  void rectangle_isSeenTurnedAndWithPointsOnItsSides() {
    RectangleSides turned =
        RectangleSides.of(box(0, 0, 2, 5).turned(Angle.degrees(30), Point.metres(1, 1)))
            .orElseThrow();
    assertEquals(5, turned.length().metres(), 1e-6);
    assertEquals(2, turned.width().metres(), 1e-6);
    List<Point> five =
        List.of(
            Point.metres(0, 0),
            Point.metres(1, 0),
            Point.metres(3, 0),
            Point.metres(3, 4),
            Point.metres(0, 4));
    assertEquals(4, RectangleSides.of(Shape.polygon(five)).orElseThrow().length().metres(), 1e-9);
    assertTrue(RectangleSides.of(box(0, 0, 4, 4).minus(box(1, 1, 1, 1))).isEmpty(), "a hole");
    assertTrue(RectangleSides.of(box(0, 0, 1, 1).plus(box(3, 0, 1, 1))).isEmpty(), "two parts");
    assertTrue(RectangleSides.of(box(0, 0, 4, 3).minus(box(2, 2, 2, 1))).isEmpty(), "six");
    // A rhombus has halved diagonals of 6 and 8 m, a kite equal ones that are not halved.
    assertTrue(
        RectangleSides.of(
                Shape.polygon(
                    List.of(
                        Point.metres(-3, 0),
                        Point.metres(0, -4),
                        Point.metres(3, 0),
                        Point.metres(0, 4))))
            .isEmpty());
    assertTrue(
        RectangleSides.of(
                Shape.polygon(
                    List.of(
                        Point.metres(-3, 0),
                        Point.metres(0, -4),
                        Point.metres(3, 0),
                        Point.metres(0, 2))))
            .isEmpty());
  }
}
