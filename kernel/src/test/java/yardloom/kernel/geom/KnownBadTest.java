package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.locationtech.jts.geom.Geometry;
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
}
