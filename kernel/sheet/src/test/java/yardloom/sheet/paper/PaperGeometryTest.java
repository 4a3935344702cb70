package yardloom.sheet.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.UnitSystem;

/** Boxes, views, columns and break lines, worked by hand. */
class PaperGeometryTest {
  /** From 10 to 40 sideways, from 20 to 60 down. */
  private static final Box BOX = new Box(10, 20, 30, 40);

  @Test
  void box_hasItsCornersAndNearestPoints() {
    assertEquals(BOX, Box.around(new Xy(25, 40), 30, 40));
    assertEquals(new Xy(25, 40), BOX.centre());
    assertEquals(new Box(15, 25, 20, 30), BOX.inset(5));
    assertEquals(new Xy(10, 60), BOX.nearest(new Xy(0, 70)));
    assertEquals(new Xy(40, 20), BOX.nearest(new Xy(50, 3)));
    assertEquals(new Xy(12, 33), BOX.nearest(new Xy(12, 33)));
    assertTrue(BOX.contains(new Xy(10, 20)) && BOX.contains(new Xy(40, 60)));
    assertFalse(BOX.contains(new Xy(9.9, 30)) || BOX.contains(new Xy(40.1, 30)));
    assertFalse(BOX.contains(new Xy(20, 19.9)) || BOX.contains(new Xy(20, 60.1)));
  }

  /** The other box is 20 by 8: 7 mm to the right, the left, above or below. */
  @ParameterizedTest
  @CsvSource({"47, 30", "-17, 30", "15, 5", "15, 67"})
  void box_sevenMillimetresAway_isFurtherThanSix(double x, double y) {
    Box other = new Box(x, y, 20, 8);
    assertTrue(BOX.isFurtherThan(6, other) && other.isFurtherThan(6, BOX));
    assertFalse(BOX.isFurtherThan(7, other) || other.isFurtherThan(7, BOX));
  }

  /**
   * The corner at (10, 20) has x + y = 30: a slanting line with the sum 25 passes it, one with 35
   * cuts it off. Along an edge or to it is not through the inside.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 25, 20, 5, false", "5, 30, 25, 10, true", "0, 40, 9, 40, false", "0, 40, 10, 40, false",
    "0, 40, 11, 40, true", "10, 0, 10, 90, false", "40, 25, 40, 50, false", "12, 0, 12, 90, true",
    "0, 20, 90, 20, false", "0, 60, 90, 60, false", "0, 59, 90, 59, true", "20, 30, 25, 50, true",
    "41, 0, 41, 90, false", "30, 70, 50, 50, false", "30, 65, 50, 45, true", "20, 61, 20, 99, false"
  })
  void segment_throughTheInside_crosses(double x1, double y1, double x2, double y2, boolean does) {
    Xy from = new Xy(x1, y1);
    Xy to = new Xy(x2, y2);
    assertEquals(does, BOX.isCrossedBy(from, to));
    assertEquals(does, BOX.isCrossedBy(to, from));
    assertEquals(does, Quad.of(BOX).crossedBy(from, to));
  }

  /** A quarter turn about (10, 20) lays the box to the left: from −30 to 10, from 20 to 50. */
  @Test
  void quad_turnedByAQuarter_liesOnItsSide() {
    Quad lying = Quad.of(BOX).turned(90, new Xy(10, 20));
    List<Xy> expected = List.of(new Xy(10, 20), new Xy(10, 50), new Xy(-30, 50), new Xy(-30, 20));
    for (int i = 0; i < 4; i++) {
      assertEquals(0, expected.get(i).distance(lying.corners().get(i)), 1e-9);
    }
    assertEquals(0, lying.centre().distance(new Xy(-10, 35)), 1e-9);
    assertEquals(5, lying.distance(new Xy(15, 30)), 1e-9);
    assertEquals(5, lying.distance(new Xy(13, 54)), 1e-9);
    assertEquals(0, lying.distance(new Xy(0, 30)), 1e-9);
    assertTrue(lying.inside(new Box(-31, 19, 42, 32)));
    assertFalse(lying.inside(new Box(-29, 19, 42, 32)));
    assertFalse(lying.overlaps(Quad.of(new Box(10, 20, 5, 5))));
    assertTrue(lying.overlaps(Quad.of(new Box(9, 20, 5, 5))));
    // A square of 20 on its corner reaches 14.14 up from its middle: from 64 to 49.86, above 50.
    Quad onCorner = Quad.of(Box.around(new Xy(-5, 64), 20, 20)).turned(45, new Xy(-5, 64));
    assertTrue(lying.overlaps(onCorner));
    Quad lower = Quad.of(Box.around(new Xy(-5, 64.2), 20, 20)).turned(45, new Xy(-5, 64.2));
    assertFalse(lying.overlaps(lower));
  }

  /** At 1:100 a metre is 10 mm: 3 m east and 2 m south of (2, 30), which lies on (15, 25). */
  @Test
  void view_putsMetresOnPaperAndBack() {
    View view = new View(10, 2, 30, new Xy(15, 25));
    assertEquals(new Xy(45, 45), view.toPaper(Point.metres(5, 28)));
    assertEquals(Point.metres(5, 28), view.toPlan(new Xy(45, 45)));
    assertEquals(
        List.of(new Xy(15, 25), new Xy(45, 45)),
        view.toPaper(Line.between(Point.metres(2, 30), Point.metres(5, 28)).jts()));
    // 8 by 5 m are 80 by 50 mm; in a room of 100 by 70 at (20, 30) they begin at (30, 40).
    View middle = View.centred(new Envelope(1, 9, 2, 7), 10, new Box(20, 30, 100, 70));
    assertEquals(new Xy(30, 40), middle.toPaper(Point.metres(1, 7)));
    assertEquals(new Xy(110, 90), middle.toPaper(Point.metres(9, 2)));
  }

  @Test
  void columns_fillTheSheetOnEveryPaper() {
    for (Paper paper : Paper.all()) {
      ColumnGrid grid = ColumnGrid.of(paper);
      double width = grid.content().width();
      // 20 and 10 mm of margin (ISO 5457), 4 more inside of the frame on both sides.
      assertEquals(paper.widthMm() - 38, width, 1e-9);
      assertEquals(width, grid.span(grid.columns()), 1e-9);
      assertEquals(2 * grid.columnMm() + 7, grid.span(2), 1e-9);
      assertEquals(grid.content().x(), grid.left(0), 1e-9);
      assertEquals(grid.content().right(), grid.left(grid.columns() - 1) + grid.columnMm(), 1e-9);
      double least = width < 300 ? 80 : width < 500 ? 88 : width < 700 ? 100 : 108;
      assertTrue(grid.columnMm() >= least, paper.name());
      assertTrue((grid.columns() + 1) * (least + 7) > width + 7, paper.name());
      for (int n = 1; n < grid.columns(); n++) {
        assertEquals(n, grid.columnsFor(grid.span(n)));
        assertEquals(n + 1, grid.columnsFor(grid.span(n) + 0.1));
      }
      assertFalse(grid.isAboveStrip());
      // The title reaches from the middle of the last gutter to the frame.
      assertEquals(
          grid.frame().right(), grid.left(grid.columns() - 1) - 3.5 + grid.titleBlockMm(), 1e-9);
      ColumnGrid above = grid.aboveStrip(50);
      assertTrue(above.isAboveStrip());
      assertEquals(grid.frame().bottom() - 54, above.content().bottom(), 1e-9);
      assertEquals(grid.frame().width(), above.titleBlockMm(), 1e-9);
    }
    assertEquals(15, Paper.all().size());
  }

  /** Offices print on A4, 210 by 297 mm (ISO 216), or letter, 8.5 by 11 in (ANSI). */
  @Test
  void pages_standAndSheetsLie() {
    assertEquals(new Paper("A4", 210, 297), Paper.page(UnitSystem.METRIC));
    assertEquals(215.9, Paper.page(UnitSystem.US).widthMm(), 1e-9);
    assertEquals(279.4, Paper.page(UnitSystem.US).heightMm(), 1e-9);
    assertEquals("A2", Paper.usual(UnitSystem.METRIC).name());
    assertEquals(609.6, Paper.usual(UnitSystem.US).widthMm(), 1e-9);
  }

  /** A slanting line that cuts off a corner of a ten-millionth of a millimetre is not inside. */
  @ParameterizedTest
  @CsvSource({"1e-7, false", "6e-7, false", "8e-7, true", "1e-5, true"})
  void segment_grazingACorner_countsFromAMillionth(double legMm, boolean does) {
    // The legs of what is cut off are so long, the way through it √2 of that.
    Xy from = new Xy(0, 30 + legMm);
    Xy to = new Xy(30 + legMm, 0);
    assertEquals(does, BOX.isCrossedBy(from, to));
    assertEquals(does, BOX.isCrossedBy(to, from));
  }

  /**
   * 10 cos 30° − 20 sin 30° = −1.340, 10 sin 30° + 20 cos 30° = 22.321; about (1, 2) from there.
   */
  @Test
  void quad_turnedByThirtyDegrees_hasItsCorners() {
    Xy corner = Quad.of(BOX).turned(30, new Xy(0, 0)).corners().get(0);
    assertEquals(-1.3397, corner.x(), 1e-4);
    assertEquals(22.3205, corner.y(), 1e-4);
    Xy moved = Quad.of(new Box(11, 22, 5, 5)).turned(30, new Xy(1, 2)).corners().get(0);
    assertEquals(1 - 1.3397, moved.x(), 1e-4);
    assertEquals(2 + 22.3205, moved.y(), 1e-4);
  }

  /** Through each other; touching with an end from either side; side by side; in one line. */
  @ParameterizedTest
  @CsvSource({
    "5, -3, 5, 3, true", "5, -3, 5, 0, false", "5, 3, 5, 0, false", "5, 0, 5, 3, false",
    "5, 0, 5, -3, false", "0, -3, 0, 3, false", "10, 3, 10, -3, false", "11, -3, 11, 3, false",
    "5, 1, 5, 3, false", "2, 0, 8, 0, false", "-1, -1, 4, 4, false", "9, -1, 11, 2, true"
  })
  void segments_cross_atAnInnerPointOfBoth(
      double x1, double y1, double x2, double y2, boolean does) {
    Xy a = new Xy(0, 0);
    Xy b = new Xy(10, 0);
    Xy c = new Xy(x1, y1);
    Xy d = new Xy(x2, y2);
    assertEquals(does, Quad.isCrossing(a, b, c, d));
    assertEquals(does, Quad.isCrossing(c, d, a, b));
    assertEquals(does, Quad.isCrossing(b, a, d, c));
  }
}
