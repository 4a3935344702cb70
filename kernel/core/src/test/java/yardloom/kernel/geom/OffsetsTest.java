package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import yardloom.kernel.unit.Length;

/** Published and derived values of offsets, for our own methods and for the library below them. */
class OffsetsTest {
  private static Geometry read(String wkt) throws ParseException {
    return new WKTReader().read(wkt);
  }

  private static double jtsAreaM2(
      Geometry g, double distanceM, int join, int quadrant, double limit) {
    return BufferOp.bufferOp(
            g, distanceM, new BufferParameters(quadrant, BufferParameters.CAP_ROUND, join, limit))
        .getArea();
  }

  private static double areaM2(String method, Geometry g, double d) {
    return switch (method) {
      case "grown" -> Shape.of(g).grown(Length.metres(d)).area().squareMetres();
      case "inset" ->
          Inset.of(Shape.of(g), Length.metres(d)).stream()
              .mapToDouble(s -> s.area().squareMetres())
              .sum();
      case "mitre5" -> jtsAreaM2(g, d, BufferParameters.JOIN_MITRE, 8, 5);
      case "mitre2" -> jtsAreaM2(g, d, BufferParameters.JOIN_MITRE, 8, 2);
      case "bevel" -> jtsAreaM2(g, d, BufferParameters.JOIN_BEVEL, 8, 5);
      default ->
          jtsAreaM2(g, d, BufferParameters.JOIN_ROUND, Integer.parseInt(method.substring(5)), 5);
    };
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "offsets.csv", numLinesToSkip = 1, delimiter = ';')
  void offset_referenceOutline_hasTheArea(
      String id,
      String wkt,
      double distance,
      String method,
      double area,
      double tolerance,
      String source)
      throws ParseException {
    assertEquals(area, areaM2(method, read(wkt), distance), tolerance);
  }

  /** G-08: the corners of the inset triangle, derived from its inradius. */
  @Test
  void inset_threeFourFive_hasTheScaledCorners() throws ParseException {
    Shape inset =
        Inset.of(Shape.of(read("POLYGON ((0 0, 3 0, 0 4, 0 0))")), Length.metres(0.5)).get(0);
    assertEquals(6, inset.perimeter().metres(), 1e-6);
    for (double[] xy : new double[][] {{0.5, 0.5}, {0.5, 2.5}, {2, 0.5}}) {
      assertTrue(
          inset.corners().stream()
              .anyMatch(p -> p.distance(Point.metres(xy[0], xy[1])).metres() < 1e-6),
          xy[0] + " " + xy[1]);
    }
  }

  /** G-04: a chord over 90°/q lies inside the circle by the share 1 - cos(45°/q). */
  @ParameterizedTest
  @CsvSource({"8, 0.0048153", "12, 0.0021411", "18, 0.00095178"})
  void roundBuffer_quadrantSegments_haveTheStatedError(int q, double error) {
    Geometry disc =
        RoundBuffer.plain(Overlay.FACTORY.createPoint(Point.metres(0, 0).coordinate()), 1, q);
    double nearest =
        disc.getBoundary().distance(Overlay.FACTORY.createPoint(Point.metres(0, 0).coordinate()));
    assertEquals(error, 1 - nearest, 1e-7);
  }

  /** G-11: mitre ratio 1/sin(θ/2). */
  @ParameterizedTest
  @CsvSource({"90, 1.41421", "36.8699, 3.16228", "23.074, 5", "60, 2"})
  void mitre_corner_hasTheRatio(double cornerDeg, double ratio) {
    double a = Math.toRadians(cornerDeg);
    var at = Point.metres(0, 0).coordinate();
    var before = Point.metres(1, 0).coordinate();
    var after = Point.metres(Math.cos(a), Math.sin(a)).coordinate();
    var first = Quads.left(at, before, at, 1);
    var second = Quads.left(at, at, after, 1);
    var tip = Quads.mitre(at, first, second, ratio + 1e-3);
    assertEquals(ratio, tip.orElseThrow().distance(at), 1e-3);
    assertTrue(Quads.mitre(at, first, second, ratio - 1e-3).isEmpty());
  }

  /** G-14: JTS doc and run: a buffer of zero drops a lobe of a bow-tie, the fixer keeps both. */
  @Test
  void shapeOf_bowTie_keepsBothLobes() throws ParseException {
    Geometry bowTie = read("POLYGON ((0 0, 10 10, 10 0, 0 8, 0 0))");
    assertEquals(27.7778, bowTie.buffer(0).getArea(), 1e-4);
    assertEquals(45.5556, GeometryFixer.fix(bowTie).getArea(), 1e-4);
    assertEquals(45.5556, Shape.of(bowTie).area().squareMetres(), 1e-4);
  }

  /** G-15b, JTS issue 876: the false hole is still there in the library, so we keep our own way. */
  @Test
  void bufferOp_closedLine_stillHasTheFalseHole() throws ParseException {
    Geometry line =
        read(
            "LINESTRING (19.6 85.1, 19.5 93.2, 21.7 99.6, 28 102.1, 33.8 99.5, 35.7 94.1, 33 87.2,"
                + " 26.7 85, 19.6 85.1)");
    Polygon buffered = (Polygon) line.buffer(15);
    assertEquals(1, buffered.getNumInteriorRing());
    assertEquals(1700.74, buffered.getArea(), 0.01);
  }

  /** G-16, JTS issue 847: a mitred offset reaches far further than its distance; ours may not. */
  @Test
  void pathStrip_spur_staysWithinItsMitreLimit() throws ParseException {
    Geometry ring = read("LINEARRING (2 0, 0 1.5, 1 1.5, 1 3, 0 2.3, 2 4, 2 0)");
    List<Point> points = java.util.Arrays.stream(ring.getCoordinates()).map(Point::of).toList();
    Shape strip = PathStrip.centred(Line.through(points), Length.metres(1));
    for (Point corner : strip.parts().get(0).corners()) {
      double awayM = ring.distance(Overlay.FACTORY.createPoint(corner.coordinate()));
      assertTrue(awayM <= 1 + 1e-6, "corner at " + awayM);
    }
  }

  /** G-18: JTS BufferTest: a point buffer has 4q + 1 coordinates. */
  @ParameterizedTest
  @CsvSource({"53, 213", "129, 517"})
  void roundBuffer_point_has4qPlus1Coordinates(int q, int count) {
    Geometry disc =
        RoundBuffer.plain(Overlay.FACTORY.createPoint(Point.metres(100, 100).coordinate()), 80, q);
    assertEquals(count, disc.getNumPoints());
  }

  /** G-19 (JTS MaximumInscribedCircleTest) and G-20 (derived): the middle of a label. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "POLYGON ((100 200, 200 200, 200 100, 100 100, 100 200)); 150; 150; 50",
        "POLYGON ((100 0, 200 200, 300 200, 300 100, 100 0)); 238.1966; 138.1966; 61.8034",
        "POLYGON ((0 0, 3 0, 0 4, 0 0)); 1; 1; 1",
        "POLYGON ((0 0, 20 0, 20 10, 10 10, 10 20, 0 20, 0 0)); 5.8579; 5.8579; 5.8579"
      })
  void heart_referenceOutline_isTheInscribedCentre(String wkt, double x, double y, double r)
      throws ParseException {
    Geometry g = read(wkt);
    Point heart = Shape.of(g).heart();
    double reachM = g.getBoundary().distance(Overlay.FACTORY.createPoint(heart.coordinate()));
    assertEquals(r, reachM, 0.011);
    assertEquals(x, heart.x().metres(), 0.3);
    assertEquals(y, heart.y().metres(), 0.3);
  }

  /** G-23: overlay identity on shifted unit squares. */
  @Test
  void overlay_shiftedSquares_areasBalance() {
    Length one = Length.metres(1);
    Shape a = Shape.rectangle(Point.metres(0, 0), one, one);
    Shape b = Shape.rectangle(Point.metres(0.1, 0.1), one, one);
    double and = a.and(b).area().squareMetres();
    double plus = a.plus(b).area().squareMetres();
    assertEquals(0.81, and, 1e-9);
    assertEquals(1.19, plus, 1e-9);
    assertEquals(0, 2 - and - plus, 1e-9);
  }

  /** G-24: JTS OffsetCurveTest: the positive side of a line is its left. */
  @Test
  void leftOf_diagonal_liesAboveIt() {
    Line line = Line.between(Point.metres(0, 0), Point.metres(9, 9));
    Shape strip = PathStrip.leftOf(line, Length.ZERO, Length.metres(1));
    assertTrue(strip.contains(Point.metres(-0.7, 0.7)));
    assertFalse(strip.contains(Point.metres(0.1, 0)));
    assertEquals(-0.71, strip.bounds().getMinX(), 0.005);
    assertEquals(9.71, strip.bounds().getMaxY(), 0.005);
  }

  /** G-25: the library's own simplification would lose 1.3e-4 of the area; ours is off. */
  @Test
  void grown_finePolygon_isNotSimplified() {
    Geometry ring =
        RoundBuffer.plain(Overlay.FACTORY.createPoint(Point.metres(0, 0).coordinate()), 100, 180);
    assertEquals(7852.98, BufferOp.bufferOp(ring, -50, new BufferParameters()).getArea(), 0.01);
    double inset = Inset.of(Shape.of(ring), Length.metres(50)).get(0).area().squareMetres();
    // A regular 720-gon about r 100 shrunk by 50: apothem 100 cos(π/720) − 50.
    double apothem = 100 * Math.cos(Math.PI / 720) - 50;
    assertEquals(720 * apothem * apothem * Math.tan(Math.PI / 720), inset, 1e-3);
  }
}
