package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

class PathStripTest {
  private static Line line(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(Point.metres(xy[i], xy[i + 1]));
    }
    return Line.through(points);
  }

  /** JTS 1.20.0, BufferParameterTest: flat cap, mitre limit 2. */
  @Test
  void centred_rightAngle_equalsTheJtsFixture() throws ParseException {
    Shape strip = PathStrip.centred(line(20, 20, 20, 80, 80, 80), Length.metres(20));
    Shape expected =
        Shape.of(
            new WKTReader().read("POLYGON ((10 20, 10 90, 80 90, 80 70, 30 70, 30 20, 10 20))"));
    assertTrue(strip.minus(expected).isEmpty() && expected.minus(strip).isEmpty());
  }

  /** JTS issue 876, first ring: a loop narrower than its width has no hole. */
  @Test
  void centred_firstRingOfJts876_hasNoHole() {
    Shape strip = PathStrip.centred(line(-20, 0, 0, 20, 20, 0, 0, -20, -20, 0), Length.metres(140));
    assertEquals(1, strip.polygons().size());
    assertEquals(0, strip.polygons().get(0).getNumInteriorRing());
  }

  /** JTS issue 876, second ring; 1741.94 is the area of the ring buffered as a polygon (round). */
  @Test
  void centred_secondRingOfJts876_hasNoHoleAndFillsTheRing() {
    Line ring =
        line(
            19.6, 85.1, 19.5, 93.2, 21.7, 99.6, 28, 102.1, 33.8, 99.5, 35.7, 94.1, 33, 87.2, 26.7,
            85, 19.6, 85.1);
    Shape strip = PathStrip.centred(ring, Length.metres(30));
    assertEquals(0, strip.polygons().get(0).getNumInteriorRing());
    assertTrue(strip.area().squareMetres() >= 1741.9, "mitred corners add to the round ones");
    assertTrue(strip.covers(Shape.polygon(ring.points().subList(0, 8))));
  }

  @Test
  void centred_square_leavesTheTrueHole() {
    Shape strip = PathStrip.centred(line(0, 0, 10, 0, 10, 10, 0, 10, 0, 0), Length.metres(2));
    assertEquals(1, strip.polygons().get(0).getNumInteriorRing());
    assertEquals(12 * 12 - 8 * 8, strip.area().squareMetres(), 1e-6);
  }

  @Test
  void leftOf_counterClockwiseLoop_liesInside() {
    Shape strip =
        PathStrip.leftOf(
            line(0, 0, 10, 0, 10, 10, 0, 10, 0, 0), Length.metres(1), Length.metres(2));
    assertEquals(8 * 8 - 4 * 4, strip.area().squareMetres(), 1e-6);
  }

  @Test
  void leftOf_outwardCorner_isMitred() {
    Shape strip = PathStrip.leftOf(line(0, 0, 0, 10, 10, 10), Length.ZERO, Length.metres(1));
    assertEquals(11 + 10, strip.area().squareMetres(), 1e-6);
    assertEquals(11, strip.bounds().getMaxY(), 1e-6);
  }

  @Test
  void centred_lineThatTurnsBack_isRoundAtTheTurn() {
    Shape strip = PathStrip.centred(line(0, 0, 10, 0, 5, 0), Length.metres(2));
    assertEquals(20 + Math.PI / 2, strip.area().squareMetres(), 0.002);
  }

  @Test
  void centred_noWidth_isRefused() {
    assertThrows(PlanException.class, () -> PathStrip.centred(line(0, 0, 1, 0), Length.ZERO));
  }
}
