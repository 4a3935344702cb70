package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Length;

/** Offsets published with the geometry library and elsewhere, held against our own strips. */
class PublishedOffsetsTest {
  private static Geometry read(String wkt) throws ParseException {
    return new WKTReader().read(wkt);
  }

  private static Line line(String wkt) throws ParseException {
    return Line.through(Arrays.stream(read(wkt).getCoordinates()).map(Point::of).toList());
  }

  /** G-15, JTS issue 876, first ring: wider than the ring is, the strip has no hole. */
  @Test
  void centred_loopNarrowerThanItsWidth_hasNoHole() throws ParseException {
    String ring = "LINESTRING (-20 0, 0 20, 20 0, 0 -20, -20 0)";
    Polygon library = (Polygon) read(ring).buffer(70);
    assertEquals(0, library.getNumInteriorRing());
    assertEquals(24_014.7, library.getArea(), 0.1);
    Shape ours = PathStrip.centred(line(ring), Length.metres(140));
    assertEquals(1, ours.polygons().size());
    assertEquals(0, ours.polygons().get(0).getNumInteriorRing());
    // Mitred at four right angles: a square of side 20√2 + 140.
    assertEquals(Math.pow(20 * Math.sqrt(2) + 140, 2), ours.area().squareMetres(), 1e-3);
  }

  /** G-17, JTS BufferParameterTest: flat caps, mitre limit 2, the exact outline. */
  @Test
  void centred_rightAngle_isTheLibrarysOwnFixture() throws ParseException {
    Geometry expected = read("POLYGON ((10 20, 10 90, 80 90, 80 70, 30 70, 30 20, 10 20))");
    String bend = "LINESTRING (20 20, 20 80, 80 80)";
    BufferParameters flat =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2);
    assertTrue(BufferOp.bufferOp(read(bend), 10, flat).equalsTopo(expected));
    Geometry ours = PathStrip.centred(line(bend), Length.metres(20)).jts();
    assertEquals(0, ours.symDifference(expected).getArea(), 1e-6);
  }

  /** G-21, mapbox/polylabel test: a ring without area gives no endless search; here, no shape. */
  @Test
  void polygon_zeroArea_isRefusedAtOnce() {
    assertThrows(
        PlanException.class,
        () ->
            Shape.polygon(
                java.util.List.of(Point.metres(0, 0), Point.metres(1, 0), Point.metres(2, 0))));
  }

  /**
   * G-01 and G-03: outwards round by r a convex outline has at most A + P r + π r² (Steiner), for
   * the arcs are chords inside of them, and no less than the chords at their stated sagitta leave.
   */
  @Property(tries = 200, seed = "20261125")
  void grown_convexOutline_isJustBelowSteinersArea(
      @ForAll @IntRange(min = 3, max = 12) int corners,
      @ForAll @DoubleRange(min = 1, max = 40) double radiusM,
      @ForAll @DoubleRange(min = 0.1, max = 15) double byM,
      @ForAll @DoubleRange(min = 0, max = 6.28) double turn) {
    java.util.List<Point> ring = new java.util.ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = turn + 2 * Math.PI * i / corners;
      ring.add(Point.metres(radiusM * Math.cos(a), radiusM * Math.sin(a)));
    }
    Shape shape = Shape.polygon(ring);
    double steiner =
        shape.area().squareMetres() + shape.perimeter().metres() * byM + Math.PI * byM * byM;
    double grown = shape.grown(Length.metres(byM)).area().squareMetres();
    assertTrue(grown <= steiner * (1 + 1e-9), grown + " > " + steiner);
    assertTrue(grown >= steiner - 0.003 * Math.PI * byM * byM, grown + " << " + steiner);
  }
}
