package yardloom.site.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

class WallToLineTest {
  private static final Shape HOUSE = box(5, 5, 10, 8);
  private static final Line PARALLEL = Line.between(p(0, 0), p(30, 0));

  private static Point p(double xM, double yM) {
    return Point.metres(xM, yM);
  }

  private static Shape box(double xM, double yM, double widthM, double depthM) {
    return Shape.rectangle(p(xM, yM), Length.metres(widthM), Length.metres(depthM));
  }

  private static Line past(Line side, List<Geometry> others) {
    return WallToLine.between(HOUSE, side, others, List.of(), List.of());
  }

  @Test
  void between_freeParallelWall_leavesItsMiddleSquarely() {
    Line way = past(PARALLEL, List.of());
    assertEquals(5, way.length().metres(), 1e-9);
    assertEquals(10, way.start().x().metres(), 1e-9);
    assertEquals(10, way.end().x().metres(), 1e-9);
  }

  @Test
  void between_bedBeforeTheMiddle_goesPastItEquallyShort() {
    Shape bed = box(7, 1, 6, 2);
    Line way = past(PARALLEL, List.of(bed.jts()));
    assertFalse(way.jts().intersects(bed.jts()));
    assertEquals(5, way.length().metres(), 1e-9);
  }

  /** A bed along the whole wall cannot be passed; the distance must not grow for its sake. */
  @Test
  void between_bedAlongTheWholeWall_crossesIt() {
    Shape bed = box(0, 1, 30, 2);
    Line way = past(PARALLEL, List.of(bed.jts()));
    assertTrue(way.jts().intersects(bed.jts()));
    assertEquals(5, way.length().metres(), 1e-9);
  }

  /** Distance of a point from 3x + 4y = 0 is |3x + 4y| / 5 (Hesse's normal form): 35 / 5. */
  @Test
  void between_skewSide_startsAtTheNearestCornerWhateverStandsThere() {
    Line skew = Line.between(p(-40, 30), p(40, -30));
    Line way = past(skew, List.of(box(1, 1, 2, 2).jts()));
    assertEquals(7, way.length().metres(), 1e-9);
    assertEquals(0, way.start().distance(p(5, 5)).metres(), 1e-9);
  }

  private static double startsAt(
      Shape house, List<Geometry> others, List<Geometry> passable, List<Geometry> lines) {
    Line way = WallToLine.between(house, PARALLEL, others, passable, lines);
    assertEquals(5, way.length().metres(), 0.011);
    return way.start().x().metres();
  }

  /** Which way from the middle, 10, is the same where both are as free. */
  private static double offMiddle(
      List<Geometry> others, List<Geometry> passable, List<Geometry> lines) {
    return Math.abs(startsAt(HOUSE, others, passable, lines) - 10);
  }

  /**
   * The wall of 10 m is tried every 10/48 m from its middle, x = 10. A bed from 8.9 to 11.1 is far
   * enough 1.2 m from its edge, 2.3 m from the middle: the twelfth place, 12 × 10 / 48 = 2.5 m.
   */
  @Test
  void between_bedInTheMiddle_keepsRoomOnTheNextPlaceOfTheWall() {
    Geometry bed = box(8.9, 1, 2.2, 2).jts();
    assertEquals(2.5, offMiddle(List.of(bed), List.of(), List.of()), 1e-9);
  }

  /** A bed from 8 m past the end of the wall leaves its left part: 8 − 1.2 = 6.8, so 16 places. */
  @Test
  void between_bedOverTheRight_goesLeft() {
    Geometry bed = box(8, 1, 10, 2).jts();
    assertEquals(10 - 16 * 10 / 48.0, startsAt(HOUSE, List.of(bed), List.of(), List.of()), 1e-9);
  }

  /** What may be crossed is avoided all the same: 1 m to its edge is five places of 10/48 m. */
  @Test
  void between_pathInTheMiddle_goesBesideIt() {
    Geometry path = box(9, 1, 2, 2).jts();
    assertEquals(5 * 10 / 48.0, offMiddle(List.of(), List.of(path), List.of()), 1e-9);
  }

  /** The measure stands in the middle of the way: nearer than 0.4 m to a line is two places off. */
  @Test
  void between_lineDownTheMiddle_isNotRunAlong() {
    Geometry line = Line.between(p(10, 1), p(10, 4)).jts();
    assertEquals(2 * 10 / 48.0, offMiddle(List.of(), List.of(), List.of(line)), 1e-9);
  }

  /** A line that ends before the middle of the way does not hold the measure up. */
  @Test
  void between_lineAwayFromTheMeasure_isNoMatter() {
    Geometry line = Line.between(p(10, 0.5), p(10, 2)).jts();
    assertEquals(10, startsAt(HOUSE, List.of(), List.of(), List.of(line)), 1e-9);
  }

  /** Across a path (10) is better than 0.2 m beside a bed (50), and than along a line (30). */
  @Test
  void between_everyPlaceHasAFault_takesTheLeastOfThem() {
    Geometry path = box(0, 1, 12, 1).jts();
    Geometry bed = box(12.3, 1, 20, 2).jts();
    assertEquals(10, startsAt(HOUSE, List.of(bed), List.of(path), List.of()), 1e-9);
    Geometry line = Line.between(p(12.3, 2.5), p(30, 2.5)).jts();
    assertEquals(10, startsAt(HOUSE, List.of(), List.of(path), List.of(line)), 1e-9);
  }

  /** Limits are kept, not passed: 0.4 m from two beds beside the middle it may stand, and 1.2 m. */
  @Test
  void between_atTheLimits_staysInTheMiddle() {
    Shape house = box(-5, 5, 10, 8);
    Line side = Line.between(p(-30, 0), p(30, 0));
    for (double clear : new double[] {0.4, 1.2}) {
      List<Geometry> beds = List.of(box(clear, 1, 20, 2).jts(), box(-clear - 20, 1, 20, 2).jts());
      Line way = WallToLine.between(house, side, beds, List.of(), List.of());
      assertEquals(0, way.start().x().metres(), 1e-9, "clear " + clear);
    }
    Geometry line = Line.between(p(0.4, 1), p(0.4, 4)).jts();
    Line way = WallToLine.between(house, side, List.of(), List.of(), List.of(line));
    assertEquals(0, way.start().x().metres(), 1e-9);
  }

  /** Either end of the wall can be the only free place, the last that is tried. */
  @Test
  void between_onlyAnEndOfTheWallIsFree_startsThere() {
    Geometry right = box(5.45, 1, 20, 2).jts();
    Geometry left = box(-10, 1, 24.55, 2).jts();
    Geometry beyondLeft = box(-10, 1, 14.55, 2).jts();
    Geometry beyondRight = box(15.45, 1, 20, 2).jts();
    assertEquals(5, startsAt(HOUSE, List.of(right, beyondLeft), List.of(), List.of()), 1e-9);
    assertEquals(15, startsAt(HOUSE, List.of(left, beyondRight), List.of(), List.of()), 1e-9);
  }

  /** A wall is parallel while its ends are within a centimetre; one farther out has one place. */
  @Test
  void between_wallHardlyOutOfParallel_leavesItsMiddle() {
    assertEquals(10, startsAt(leaning(5.01, 5), List.of(), List.of(), List.of()), 1e-9);
    assertEquals(10, startsAt(leaning(5, 5.01), List.of(), List.of(), List.of()), 1e-9);
    assertEquals(15, startsAt(leaning(5.02, 5), List.of(), List.of(), List.of()), 1e-9);
    assertEquals(5, startsAt(leaning(5, 5.02), List.of(), List.of(), List.of()), 1e-9);
  }

  private static Shape leaning(double leftM, double rightM) {
    return Shape.polygon(List.of(p(5, leftM), p(15, rightM), p(15, 13), p(5, 13)));
  }
}
