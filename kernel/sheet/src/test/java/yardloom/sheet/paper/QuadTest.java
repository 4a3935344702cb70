package yardloom.sheet.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Our small rectangle geometry against JTS 1.20. */
class QuadTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  private static Polygon jts(Quad quad) {
    List<Xy> c = quad.corners();
    Coordinate[] ring = new Coordinate[5];
    for (int i = 0; i < 5; i++) {
      ring[i] = new Coordinate(c.get(i % 4).x(), c.get(i % 4).y());
    }
    return JTS.createPolygon(ring);
  }

  @Property(seed = "20261125")
  void overlaps_turnedRectangles_agreesWithJts(
      @ForAll @DoubleRange(min = -20, max = 20) double x,
      @ForAll @DoubleRange(min = -20, max = 20) double y,
      @ForAll @DoubleRange(min = 1, max = 30) double width,
      @ForAll @DoubleRange(min = 1, max = 9) double height,
      @ForAll @DoubleRange(min = -180, max = 180) double degrees) {
    Quad fixed = Quad.of(new Box(0, 0, 12, 4));
    Quad turned = Quad.of(new Box(x, y, width, height)).turned(degrees, new Xy(x, y));
    double depth = jts(fixed).intersection(jts(turned)).getArea();
    boolean clear = depth > 1e-3 || depth == 0 && jts(fixed).distance(jts(turned)) > 1e-3;
    if (clear) {
      assertEquals(depth > 0, fixed.overlaps(turned));
      assertEquals(depth > 0, turned.overlaps(fixed));
    }
  }

  @Property(seed = "20261125")
  void distance_toPoint_agreesWithJts(
      @ForAll @DoubleRange(min = -50, max = 50) double px,
      @ForAll @DoubleRange(min = -50, max = 50) double py,
      @ForAll @DoubleRange(min = -180, max = 180) double degrees) {
    Quad quad = Quad.of(new Box(3, 4, 20, 5)).turned(degrees, new Xy(3, 4));
    Point point = JTS.createPoint(new Coordinate(px, py));
    assertEquals(jts(quad).distance(point), quad.distance(new Xy(px, py)), 1e-9);
  }

  @Property(seed = "20261125")
  void crossedBy_segment_agreesWithJts(
      @ForAll @DoubleRange(min = -30, max = 30) double x1,
      @ForAll @DoubleRange(min = -30, max = 30) double y1,
      @ForAll @DoubleRange(min = -30, max = 30) double x2,
      @ForAll @DoubleRange(min = -30, max = 30) double y2) {
    Quad quad = Quad.of(new Box(-5, -2, 14, 6)).turned(20, new Xy(0, 0));
    var segment =
        JTS.createLineString(new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, y2)});
    double inside = segment.intersection(jts(quad)).getLength();
    if (inside > 1e-3 || segment.distance(jts(quad)) > 1e-3) {
      assertEquals(inside > 1e-3, quad.crossedBy(new Xy(x1, y1), new Xy(x2, y2)));
    }
  }

  @Property(seed = "20261125")
  void boxCrossed_segment_agreesWithJts(
      @ForAll @DoubleRange(min = -30, max = 30) double x1,
      @ForAll @DoubleRange(min = -30, max = 30) double y1,
      @ForAll @DoubleRange(min = -30, max = 30) double x2,
      @ForAll @DoubleRange(min = -30, max = 30) double y2) {
    Box box = new Box(-5, -2, 14, 6);
    var segment =
        JTS.createLineString(new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, y2)});
    double inside = segment.intersection(jts(Quad.of(box.inset(1e-4)))).getLength();
    if (inside > 1e-3 || segment.distance(jts(Quad.of(box))) > 1e-3) {
      assertEquals(inside > 1e-3, box.isCrossedBy(new Xy(x1, y1), new Xy(x2, y2)));
    }
  }
}
