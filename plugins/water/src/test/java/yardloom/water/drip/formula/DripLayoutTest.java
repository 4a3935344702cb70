package yardloom.water.drip.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** Where rows lie. Source: plane geometry, worked beside each value. */
class DripLayoutTest {
  private static final double NEAR_M = 1e-6;

  private static Shape box(double left, double front, double width, double depth) {
    return Shape.rectangle(Point.metres(left, front), Length.metres(width), Length.metres(depth));
  }

  private static List<Line> rows(Shape bed, double rowM, double outletM) {
    return DripLayout.rows(bed, Length.metres(rowM), Length.metres(outletM));
  }

  /**
   * 1.3 m over 0.4 m are 3.25, so 3 rows over 0.8 m; what is left of the width, 0.5 m, lies half in
   * front, half behind: rows at 0.25, 0.65 and 1.05 m.
   */
  @Test
  void rowsLieInTheMiddle_withTheSpacingBetweenThem() {
    List<Line> rows = rows(box(0, 0, 5, 1.3), 0.4, 0.3);
    List<Double> across = rows.stream().map(r -> r.start().y().metres()).sorted().toList();
    assertEquals(3, rows.size());
    assertEquals(0.25, across.get(0), NEAR_M);
    assertEquals(0.65, across.get(1), NEAR_M);
    assertEquals(1.05, across.get(2), NEAR_M);
    rows.forEach(r -> assertEquals(5, r.length().metres(), NEAR_M));
  }

  /** 0.6 m over 0.4 m are 1.5, up to 2; 0.59 m are 1.475, so 1; 0.1 m still has one. */
  @Test
  void halfARowIsRoundedUp_andNoBedIsWithout() {
    assertEquals(2, rows(box(0, 0, 5, 0.6), 0.4, 0.3).size());
    assertEquals(1, rows(box(0, 0, 5, 0.59), 0.4, 0.3).size());
    assertEquals(1, rows(box(0, 0, 5, 0.1), 0.4, 0.3).size());
  }

  /** Part by part from the left, whatever the order in which they were drawn. */
  @Test
  void partsComeFromLeftToRight() {
    List<Line> rows =
        rows(box(10, 0, 3, 0.5).plus(box(0, 0, 6, 0.5)).plus(box(7, 0, 2, 0.5)), 0.4, 0.3);
    assertEquals(
        List.of(6L, 2L, 3L), rows.stream().map(r -> Math.round(r.length().metres())).toList());
  }

  /** Half an outlet's spacing is the least that carries an outlet: 0.2 of 0.4 m, not 0.19. */
  @Test
  void pieceWithoutRoomForAnOutlet_isLeftOut() {
    assertEquals(1, rows(box(0, 0, 0.2, 0.05), 0.4, 0.4).size());
    assertTrue(rows(box(0, 0, 0.19, 0.05), 0.4, 0.4).isEmpty());
  }

  /** 3 m at 0.4 m: 7.5, up to 8; 2.9 m: 7.25, so 7. */
  @Test
  void outlets_startHalfASpacingIn() {
    assertEquals(8, DripLayout.outlets(Length.metres(3), Length.metres(0.4)));
    assertEquals(7, DripLayout.outlets(Length.metres(2.9), Length.metres(0.4)));
    assertEquals(0, DripLayout.outlets(Length.metres(0.19), Length.metres(0.4)));
  }

  @Test
  void noSpacing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> rows(box(0, 0, 5, 1), 0, 0.3));
    assertThrows(IllegalArgumentException.class, () -> rows(box(0, 0, 5, 1), 0.4, 0));
  }
}
