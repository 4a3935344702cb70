package yardloom.sheet.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/** Against JTS on an L, which has a corner that bends inwards. */
class FootprintTest {
  private static final List<Xy> RING =
      List.of(
          new Xy(0, 0),
          new Xy(60, 0),
          new Xy(60, 20),
          new Xy(20, 20),
          new Xy(20, 50),
          new Xy(0, 50));
  private static final Footprint L = new Footprint(RING);
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Polygon polygon() {
    Coordinate[] ring = new Coordinate[RING.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Xy p = RING.get(i % RING.size());
      ring[i] = new Coordinate(p.x(), p.y());
    }
    return JTS.createPolygon(ring);
  }

  private static Geometry jts(Box box) {
    return JTS.toGeometry(new Envelope(box.x(), box.right(), box.y(), box.bottom()));
  }

  @Property(seed = "20261125")
  void box_anywhere_liesInsideAsJtsSays(
      @ForAll @DoubleRange(min = -30, max = 70) double x,
      @ForAll @DoubleRange(min = -30, max = 60) double y,
      @ForAll @DoubleRange(min = 0.5, max = 40) double width,
      @ForAll @DoubleRange(min = 0.5, max = 30) double height) {
    Box box = new Box(x, y, width, height);
    // Hair's breadths either way are left to rounding.
    if (polygon().covers(jts(box.inset(-1e-4)))) {
      assertTrue(L.contains(box));
    } else if (!polygon().covers(jts(box.inset(1e-4)))) {
      assertFalse(L.contains(box));
    }
    assertEquals(polygon().distance(jts(box)), L.distance(box), 1e-5);
  }

  @Property(seed = "20261125")
  void point_anywhere_isNearestWhereJtsSays(
      @ForAll @DoubleRange(min = -30, max = 90) double x,
      @ForAll @DoubleRange(min = -30, max = 90) double y) {
    Xy p = new Xy(x, y);
    double expected = polygon().getBoundary().distance(JTS.createPoint(new Coordinate(x, y)));
    assertEquals(expected, L.nearest(p).distance(p), 1e-9);
  }

  @Test
  void box_acrossTheInnerCorner_isNotInside() {
    assertFalse(L.contains(new Box(10, 10, 30, 30)));
    assertTrue(L.contains(new Box(2, 2, 50, 15)));
  }

  @Test
  void outline_ofTwoCorners_isRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Footprint(List.of(new Xy(0, 0), new Xy(1, 1))));
  }
}
