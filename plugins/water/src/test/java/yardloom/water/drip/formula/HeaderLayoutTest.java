package yardloom.water.drip.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** How rows are joined. Source: plane geometry, worked beside each value. */
class HeaderLayoutTest {
  private static final double SAME_M = 1e-9;

  private static Shape box(double left, double front, double width, double depth) {
    return Shape.rectangle(Point.metres(left, front), Length.metres(width), Length.metres(depth));
  }

  private static Line row(double fromX, double fromY, double toX, double toY) {
    return Line.between(Point.metres(fromX, fromY), Point.metres(toX, toY));
  }

  private static void starts(double xM, double yM, HeaderLayout.Joined row) {
    assertEquals(xM, row.line().start().x().metres(), SAME_M);
    assertEquals(yM, row.line().start().y().metres(), SAME_M);
  }

  /**
   * From a feed at the rear right of a bed of 10 by 4 m the rows are taken from the rear on, each
   * from its right end: 0.7 m to the second, 1.1 m from there to the third.
   */
  @Test
  void rows_startAtTheEndsNearestToTheFeed_inTheOrderOfTheirDistance() {
    List<HeaderLayout.Joined> rows =
        HeaderLayout.of(
            box(0, 0, 10, 4),
            List.of(row(0.5, 1, 9.5, 1), row(9.5, 2.1, 0.5, 2.1), row(0.5, 2.8, 9.5, 2.8)),
            Optional.of(Point.metres(11, 3)));
    assertEquals(List.of(-1, 0, 1), rows.stream().map(HeaderLayout.Joined::from).toList());
    starts(9.5, 2.8, rows.get(0));
    starts(9.5, 2.1, rows.get(1));
    starts(9.5, 1, rows.get(2));
    assertEquals(Length.ZERO, rows.get(0).headerLength());
    assertEquals(0.7, rows.get(1).headerLength().metres(), SAME_M);
    assertEquals(1.1, rows.get(2).headerLength().metres(), SAME_M);
  }

  /**
   * The first row as it lies; of the others always the one whose end is nearest to a joined one.
   */
  @Test
  void withoutFeed_theFirstRowIsFirst_thenTheNearest() {
    List<HeaderLayout.Joined> rows =
        HeaderLayout.of(
            box(0, 0, 10, 4),
            List.of(row(0.5, 1, 9.5, 1), row(9.5, 3, 0.5, 3), row(9.5, 1.6, 0.5, 1.6)),
            Optional.empty());
    assertEquals(List.of(-1, 0, 1), rows.stream().map(HeaderLayout.Joined::from).toList());
    starts(0.5, 1, rows.get(0));
    starts(0.5, 1.6, rows.get(1));
    starts(0.5, 3, rows.get(2));
    assertEquals(0.6, rows.get(1).headerLength().metres(), SAME_M);
    assertEquals(1.4, rows.get(2).headerLength().metres(), SAME_M);
  }

  /** Three rows that fan out of one place need no tube between their starts. */
  @Test
  void rowsWithOneStart_haveNoHeader_butKnowFromWhere() {
    List<HeaderLayout.Joined> rows =
        HeaderLayout.of(
            box(0, 0, 10, 4), List.of(row(1, 1, 9, 1), row(1, 1, 8, 3)), Optional.empty());
    assertEquals(0, rows.get(1).from());
    assertTrue(rows.get(1).header().isEmpty());
    assertEquals(Length.ZERO, rows.get(1).headerLength());
  }

  /** Two halves 2 m apart: no tube crosses the path between them. */
  @Test
  void rowInAnotherPart_isFedByItself() {
    List<HeaderLayout.Joined> rows =
        HeaderLayout.of(
            box(0, 0, 4, 3).plus(box(6, 0, 4, 3)),
            List.of(row(3.5, 1, 0.5, 1), row(6.5, 1, 9.5, 1), row(3.5, 2, 0.5, 2)),
            Optional.empty());
    assertEquals(List.of(-1, 0, -1), rows.stream().map(HeaderLayout.Joined::from).toList());
    starts(3.5, 2, rows.get(1));
    starts(6.5, 1, rows.get(2));
    assertTrue(rows.get(2).header().isEmpty());
  }

  /**
   * A bed of 10 by 4 m with a notch from the rear, x 4 to 6 and y 1 to 4. The row in the right arm
   * starts 3 m off across the notch; around its two corners, (4, 1) and (6, 1), it is √(0.5² + 2²)
   * + 2 + √(0.5² + 2²) = 6.1231 m. The row at the left wall, straight and 3.2 m off, is joined
   * first.
   */
  @Test
  void headerGoesAroundANotch_andRowsInSightComeFirst() {
    List<HeaderLayout.Joined> rows =
        HeaderLayout.of(
            box(0, 0, 10, 4).minus(box(4, 1, 2, 4)),
            List.of(row(3.5, 3, 1.5, 3), row(6.5, 3, 9.5, 3), row(0.3, 3, 0.3, 0.2)),
            Optional.empty());
    assertEquals(List.of(-1, 0, 0), rows.stream().map(HeaderLayout.Joined::from).toList());
    starts(0.3, 3, rows.get(1));
    assertEquals(3.2, rows.get(1).headerLength().metres(), SAME_M);
    starts(6.5, 3, rows.get(2));
    assertEquals(
        2 * Math.sqrt(0.25 + 4) + 2, rows.get(2).headerLength().metres(), 2e-3, "1 mm of slack");
  }
}
