package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;

/** Ways and loops inside a shape. Source: plane geometry, worked beside each value. */
class InsideLinesTest {
  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Shape box(double left, double front, double width, double depth) {
    return Shape.rectangle(Point.metres(left, front), m(width), m(depth));
  }

  private static Point at(double x, double y) {
    return Point.metres(x, y);
  }

  /** From (0, 1) to (9, 1) over ground from x = 3 to 5: 3 m before it and 4 m behind it. */
  @Test
  void line_outsideAnArea_isWhatLiesBeforeAndBehindIt() {
    Line line = Line.between(at(0, 1), at(9, 1));
    assertEquals(
        List.of(Line.between(at(0, 1), at(3, 1)), Line.between(at(5, 1), at(9, 1))),
        line.outside(box(3, 0, 2, 4)));
    assertEquals(List.of(line), line.outside(box(0, 2, 9, 4)));
    assertEquals(List.of(), line.outside(box(-1, 0, 11, 4)));
  }

  /** Straight from (1, 1) to (4, 5): 5 m. */
  @Test
  void way_isStraight_whereNothingStandsInIt() {
    InsideWay way = new InsideWay(box(0, 0, 6, 6));
    assertTrue(way.isStraight(at(1, 1), at(4, 5)));
    assertEquals(5, way.between(at(1, 1), at(4, 5)).orElseThrow().length().metres(), 1e-9);
  }

  /**
   * An L of 6 m whose corner (2, 2) is reflex: from (1, 5) to (6, 1) by it: √(1 + 9) + √(16 + 1) =
   * 3.1623 + 4.1231 m.
   */
  @Test
  void way_bendsAtTheCornerThatReachesIn() {
    Shape ell = box(0, 0, 6, 6).minus(box(2, 2, 5, 5));
    InsideWay way = new InsideWay(ell);
    assertFalse(way.isStraight(at(1, 5), at(6, 1)));
    Line line = way.between(at(1, 5), at(6, 1)).orElseThrow();
    assertEquals(3, line.points().size());
    assertEquals(Math.sqrt(10) + Math.sqrt(17), line.length().metres(), 1e-6);
    assertEquals(1, line.start().x().metres(), 1e-9);
    assertEquals(6, line.end().x().metres(), 1e-9);
  }

  /**
   * Round a hole of 2 by 1 m in the middle of 6 by 5 m, from its left to its right side: over the
   * nearer, rear corners (2, 3) and (4, 3): 2 × √(1 + 0.09) + 2 m.
   */
  @Test
  void way_goesRoundAHole_onItsShorterSide() {
    InsideWay way = new InsideWay(box(0, 0, 6, 5).minus(box(2, 2, 2, 1)));
    Line line = way.between(at(1, 2.7), at(5, 2.7)).orElseThrow();
    assertEquals(2 + 2 * Math.sqrt(1.09), line.length().metres(), 1e-6);
    assertTrue(line.points().stream().allMatch(p -> p.y().metres() > 2.5));
  }

  @Test
  void partsApart_haveNoWay() {
    InsideWay way = new InsideWay(box(0, 0, 2, 2).plus(box(3, 0, 2, 2)));
    assertTrue(way.between(at(1, 1), at(4, 1)).isEmpty());
  }

  /**
   * A circle of 2 m, loops every 0.5 m: 2 / 0.5 = 4, half a step in: radii 1.75, 1.25, 0.75 and
   * 0.25 m.
   */
  @Test
  void loops_ofACircle_areCirclesFromOutsideIn() {
    List<Line> loops = Loops.of(Shape.circle(at(0, 0), m(2)), m(0.5));
    assertEquals(4, loops.size());
    for (int i = 0; i < 4; i++) {
      double radius = 1.75 - 0.5 * i;
      assertEquals(2 * Math.PI * radius, loops.get(i).length().metres(), 0.02 * radius);
      assertTrue(loops.get(i).isClosed());
    }
  }

  /** 0.7 m over 0.5 m are 1.4: one; 0.76 m are 1.52: two, at 0.57 and 0.19 m. */
  @Test
  void loops_areTheNearestWholeNumber_oneAtLeast() {
    assertEquals(1, Loops.of(Shape.circle(at(0, 0), m(0.7)), m(0.5)).size());
    assertEquals(1, Loops.of(Shape.circle(at(0, 0), m(0.2)), m(0.5)).size());
    List<Line> two = Loops.of(Shape.circle(at(0, 0), m(0.76)), m(0.5));
    assertEquals(2, two.size());
    assertEquals(2 * Math.PI * 0.57, two.get(0).length().metres(), 0.01);
  }

  /** A ring from 2 to 3 m, loops every 0.5 m: at 2.75 and 2.25 m. */
  @Test
  void loops_ofARing_stopAtItsHole() {
    Shape ring = Shape.circle(at(0, 0), m(3)).minus(Shape.circle(at(0, 0), m(2)));
    List<Line> loops = Loops.of(ring, m(0.5));
    assertEquals(2, loops.size());
    assertEquals(2 * Math.PI * 2.75, loops.get(0).length().metres(), 0.03);
    assertEquals(2 * Math.PI * 2.25, loops.get(1).length().metres(), 0.03);
  }

  @Test
  void loops_needASpacing_andOnePart() {
    Shape circle = Shape.circle(at(0, 0), m(1));
    assertThrows(IllegalArgumentException.class, () -> Loops.of(circle, Length.ZERO));
    Shape two = box(0, 0, 1, 1).plus(box(3, 0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> Loops.of(two, m(0.2)));
  }

  /** 32 sides turn 11.25° each, eight 45°; a half round end is curved, a box is not. */
  @Test
  void curved_isWhatTurnsHalfwayRoundInSmallSteps() {
    assertTrue(Loops.isCurved(corners(32, 2 * Math.PI)));
    assertFalse(Loops.isCurved(corners(8, 2 * Math.PI)));
    assertFalse(Loops.isCurved(box(0, 0, 4, 1)));
    // 150° of the round in steps of 10° turn less than half a turn.
    assertFalse(Loops.isCurved(corners(15, Math.toRadians(150))));
  }

  private static Shape corners(int steps, double turn) {
    int last = turn < 6 ? steps : steps - 1;
    return Shape.polygon(
        IntStream.rangeClosed(0, last)
            .mapToObj(i -> at(Math.cos(i * turn / steps), Math.sin(i * turn / steps)))
            .toList());
  }

  /** A square of 4 m begun at the middle of its right side: 16 m round, from there to there. */
  @Test
  void loop_canBeginWhereItIsNearest() {
    Line square = Line.through(List.of(at(0, 0), at(4, 0), at(4, 4), at(0, 4), at(0, 0)));
    Line turned = Loops.startingNear(square, at(7, 2));
    assertEquals(4, turned.start().x().metres(), 1e-9);
    assertEquals(2, turned.start().y().metres(), 1e-9);
    assertTrue(turned.isClosed());
    assertEquals(16, turned.length().metres(), 1e-9);
    assertEquals(6, turned.points().size());
    assertEquals(5, Loops.startingNear(square, at(-1, -1)).points().size());
    Line open = Line.between(at(0, 0), at(4, 0));
    assertEquals(open, Loops.startingNear(open, at(7, 2)));
  }
}
