package yardloom.site.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** A lot of 30 × 40 m with a house of 10 × 8 m: 7 m from its west side, 11 m from its north. */
class OutsideChainTest {
  private static final Shape LOT = box(0, 0, 30, 40);
  private static final Shape HOUSE = box(7, 21, 10, 8);
  private static final Line NORTH = Line.between(p(30, 40), p(0, 40));

  private static Point p(double xM, double yM) {
    return Point.metres(xM, yM);
  }

  private static Shape box(double xM, double yM, double widthM, double depthM) {
    return Shape.rectangle(p(xM, yM), Length.metres(widthM), Length.metres(depthM));
  }

  private static LotDistances.Distance chain(Geometry... things) {
    return OutsideChain.of(HOUSE, NORTH, LOT, List.of(things), new double[] {3, 0.7}, 9)
        .orElseThrow();
  }

  /**
   * From the corner (7, 29) the lot ends 7 m to the west: the line runs 3 m beyond, left of north.
   */
  @Test
  void of_freeGround_runsBesideTheNearerSide() {
    LotDistances.Distance chain = chain();
    assertEquals(0, chain.from().distance(p(7, 29)).metres(), 1e-9);
    assertEquals(0, chain.to().distance(p(7, 40)).metres(), 1e-9);
    assertEquals(7 + 3, chain.offset().metres(), 1e-9);
  }

  /** A neighbour's house in the west: from the corner (17, 29) it is 13 m to the east side. */
  @Test
  void of_neighbourOnTheNearerSide_runsBesideTheOther() {
    LotDistances.Distance chain = chain(box(-6, 25, 5, 10).jts());
    assertEquals(0, chain.from().distance(p(17, 29)).metres(), 1e-9);
    assertEquals(-(13 + 3), chain.offset().metres(), 1e-9);
  }

  /**
   * Neighbours on both sides stand 3 m and 2.5 m off, and no line runs 3 m beyond the lot without
   * going through them: it runs between the lot and its own measure, 7 + 0.7 m from the corner.
   */
  @Test
  void of_neighboursOnBothSides_runsBetweenTheLotAndItsMeasure() {
    LotDistances.Distance chain = chain(box(-9, 25, 6.5, 14).jts(), box(32.5, 20, 6, 12).jts());
    assertEquals(0, chain.from().distance(p(7, 29)).metres(), 1e-9);
    assertEquals(7 + 0.7, chain.offset().metres(), 1e-9);
  }

  /** A path ends in one line with the house's wall, at y = 29: the extension runs along its end. */
  @Test
  void of_pathThatEndsAtTheExtension_isNotCrossed() {
    LotDistances.Distance chain = chain(box(2, 29, 1.5, 10).jts());
    assertEquals(7 + 3, chain.offset().metres(), 1e-9);
  }

  /** The measure is that of the way, wherever it stands: 40 − 29 = 11 m. */
  @Test
  void of_anySide_measuresTheShortestWay() {
    assertEquals(11, chain().from().distance(chain().to()).metres(), 1e-9);
  }

  @Test
  void of_nothingGained_isEmpty() {
    assertTrue(OutsideChain.of(HOUSE, NORTH, LOT, List.of(), new double[] {3}, 0).isEmpty());
  }
}
