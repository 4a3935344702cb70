package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import yardloom.kernel.unit.Length;

/** Outlines from public issue threads on which offsets went wrong. */
class KnownBadTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "known-bad.csv", numLinesToSkip = 1, delimiter = ';')
  void inset_knownBadOutline_keepsItsPostconditions(
      String id, double distanceM, String survives, String wkt, String source)
      throws ParseException {
    Geometry outline = new WKTReader().read(wkt);
    Shape shape = Shape.of(outline);
    List<Shape> inset = Inset.of(shape, Length.metres(distanceM));
    assertEquals(survives.equals("yes"), !inset.isEmpty());
    for (Shape part : inset) {
      assertTrue(part.jts().isValid());
      assertTrue(part.jts().distance(outline.getBoundary()) >= distanceM - 1e-3);
    }
    Shape second = Inset.byEdges(shape, Length.metres(distanceM));
    double slackM2 = 1e-3 * (1 + shape.perimeter().metres());
    assertEquals(second.area().squareMetres(), Shape.union(inset).area().squareMetres(), slackM2);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "known-bad.csv", numLinesToSkip = 1, delimiter = ';')
  void setbacks_knownBadOutline_areValid(
      String id, double distanceM, String survives, String wkt, String source)
      throws ParseException {
    Shape shape = Shape.of(new WKTReader().read(wkt));
    List<Point> ring = new ArrayList<>(shape.corners());
    Shape free = Setbacks.buildable(shape, Lots.sides(ring, List.of(distanceM)));
    assertTrue(free.jts().isValid());
    assertEquals(survives.equals("yes"), !free.isEmpty());
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "known-bad.csv", numLinesToSkip = 1, delimiter = ';')
  void grown_knownBadOutline_isValidAndCoversIt(
      String id, double distanceM, String survives, String wkt, String source)
      throws ParseException {
    Shape shape = Shape.of(new WKTReader().read(wkt));
    Shape grown = shape.grown(Length.metres(distanceM));
    assertTrue(grown.jts().isValid());
    assertEquals(1, grown.parts().size());
    assertTrue(grown.covers(shape));
  }

  /** What an inset leaves has the same holes when it is grown back, as far as they reach. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "known-bad.csv", numLinesToSkip = 1, delimiter = ';')
  void shrunkThenGrown_knownBadOutline_fillsNoHoleAndStaysInside(
      String id, double distanceM, String survives, String wkt, String source)
      throws ParseException {
    Shape shape = Shape.of(new WKTReader().read(wkt));
    Length by = Length.metres(distanceM);
    Shape opened = shape.shrunk(by).grown(by);
    assertTrue(opened.jts().isValid());
    Length slack = Length.metres(Inset.TOLERANCE_M).plus(Shape.GROWN_WITHIN);
    assertTrue(shape.grown(slack).covers(opened));
  }

  /** A path's ground holds all within half its width, and nothing beyond its mitres. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "known-bad-lines.csv", numLinesToSkip = 1, delimiter = ';')
  void pathStrip_knownBadLine_keepsItsDistance(
      String id, double distanceM, String wkt, String source) throws ParseException {
    Geometry line = new WKTReader().read(wkt);
    List<Point> points = java.util.Arrays.stream(line.getCoordinates()).map(Point::of).toList();
    Shape strip = PathStrip.centred(Line.through(points), Length.metres(2 * distanceM));
    assertTrue(strip.jts().isValid());
    assertEquals(1, strip.parts().size());
    Geometry ends = line.getBoundary();
    for (Coordinate c : strip.jts().getCoordinates()) {
      Geometry corner = Overlay.FACTORY.createPoint(c);
      double awayM = line.distance(corner);
      assertTrue(awayM <= distanceM * PathStrip.MITRE_LIMIT + 1e-3, "beyond at " + c);
      boolean cut = !ends.isEmpty() && ends.distance(corner) < distanceM + 1e-3;
      assertTrue(cut || awayM >= distanceM - 1e-3, "too near at " + c + ": " + awayM);
    }
  }

  /** The ground around a side, as setbacks take it, without false holes. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "known-bad-lines.csv", numLinesToSkip = 1, delimiter = ';')
  void around_knownBadLine_isWhatABufferOfItsEdgesIs(
      String id, double distanceM, String wkt, String source) throws ParseException {
    LineString line = (LineString) new WKTReader().read(wkt);
    Shape around = new Shape(Overlay.unionAll(Around.pieces(line, distanceM)));
    List<Geometry> edges = new ArrayList<>();
    Coordinate[] c = line.getCoordinates();
    for (int i = 0; i + 1 < c.length; i++) {
      edges.add(
          Overlay.fineBuffer(
              Overlay.FACTORY.createLineString(new Coordinate[] {c[i], c[i + 1]}), distanceM));
    }
    Shape apart = new Shape(Overlay.unionAll(edges));
    double slackM2 = 1e-3 * apart.perimeter().metres();
    assertEquals(apart.area().squareMetres(), around.area().squareMetres(), slackM2);
    assertEquals(holes(apart), holes(around));
  }

  private static int holes(Shape shape) {
    return shape.polygons().stream().mapToInt(p -> p.getNumInteriorRing()).sum();
  }
}
