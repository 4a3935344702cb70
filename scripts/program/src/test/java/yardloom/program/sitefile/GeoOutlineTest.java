package yardloom.program.sitefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;

/** Reading GeoJSON against RFC 7946 and against lengths on the earth known from elsewhere. */
class GeoOutlineTest {
  /** The mean radius of the earth, (2a + b) / 3: H. Moritz, Geodetic Reference System 1980. */
  private static final double SPHERE_M = 6_371_008.8;

  private static final String OPEN = "{\"type\": \"Polygon\", \"coordinates\": [[";

  private static String square(double lon, double lat, double step) {
    double e = lon + step;
    double n = lat + step;
    return String.format(
        java.util.Locale.ROOT,
        OPEN + "[%s,%s],[%s,%s],[%s,%s],[%s,%s],[%s,%s]]]}",
        lon,
        lat,
        e,
        lat,
        e,
        n,
        lon,
        n,
        lon,
        lat);
  }

  private static PlanException refused(String text) {
    return assertThrows(PlanException.class, () -> GeoOutline.read(text));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/yardloom/program/sitefile/bad-geojson.csv", numLinesToSkip = 1)
  void badText_isRefusedWithWhatIsWrong(String code, String says, String text) {
    PlanException e = refused(text);
    assertEquals(code, e.problems().get(0).code().name(), e.getMessage());
    assertTrue(e.getMessage().contains(says), e.getMessage());
  }

  // X-01, RFC 7946 section 3.1.6: rings SHOULD be counter-clockwise outside, but "parsers SHOULD
  // NOT
  // reject Polygons that do not follow the right-hand rule".
  @Test
  void ring_clockwise_isReadTheSame() {
    GeoOutline ccw = GeoOutline.read(OPEN + "[0,0],[0.001,0],[0.001,0.001],[0,0.001],[0,0]]]}");
    GeoOutline clockwise =
        GeoOutline.read(OPEN + "[0,0],[0,0.001],[0.001,0.001],[0.001,0],[0,0]]]}");
    assertEquals(ccw.shape().area().squareMetres(), clockwise.shape().area().squareMetres(), 1e-3);
  }

  // X-03, RFC 7946 section 3.1.1: longitude comes first. At 60 degrees north a degree of longitude
  // is half as long as one of latitude on a sphere.
  @Test
  void axisOrder_isLongitudeThenLatitude() {
    GeoOutline read = GeoOutline.read(square(10, 60, 0.001));
    assertEquals(0.5, read.shape().width().metres() / read.shape().depth().metres(), 0.5 * 0.006);
  }

  // 1e-6 degrees of latitude are 0.1112 m on a sphere of mean radius; RFC 7946 section 11.2
  // says six decimals are about 10 cm. The ellipsoid differs from the sphere by up to 0.6 %.
  @ParameterizedTest
  @org.junit.jupiter.params.provider.ValueSource(doubles = {-60, -33, 0, 37.76, 47.61, 70})
  void latitudeStep_isAsLongAsOnTheSphere(double lat) {
    double perStepM = GeoOutline.read(square(-122.44, lat, 1e-3)).shape().depth().metres() / 1000;
    assertEquals(0.1112, SPHERE_M * Math.toRadians(1e-6), 5e-5);
    assertEquals(0.1112, perStepM, 0.1112 * 0.006);
  }

  // The radii of curvature of the WGS 84 ellipsoid at 45 degrees, from its defining a and 1/f (NIMA
  // TR8350.2, 2000) by M = a(1-e²)/(1-e² sin²φ)^1.5 and N = a/(1-e² sin²φ)^0.5: a step of a
  // thousandth of a degree is 111.132 m north and 78.847 m east (the published lengths of a degree
  // at 45 degrees are 111.132 km and 78.847 km).
  @Test
  void thousandthOfADegree_at45North_isAsTabulated() {
    GeoOutline read = GeoOutline.read(square(7, 44.9995, 1e-3));
    assertEquals(111.132, read.shape().depth().metres(), 0.002);
    double middleM = read.shape().area().squareMetres() / read.shape().depth().metres();
    assertEquals(78.847, middleM, 0.002);
  }

  // X-05, the polygon with a hole of RFC 7946 appendix A.3, shrunk to the size of a yard: the hole
  // takes 36 % of it.
  @Test
  void hole_isTakenOut() {
    String text =
        OPEN
            + "[0.0100,0],[0.0101,0],[0.0101,0.0001],[0.0100,0.0001],[0.0100,0]],"
            + "[[0.01008,0.00008],[0.01008,0.00002],[0.01002,0.00002],[0.01002,0.00008],"
            + "[0.01008,0.00008]]]}";
    GeoOutline read = GeoOutline.read(text);
    double outerM2 = read.shape().width().metres() * read.shape().depth().metres();
    assertEquals(0.64, read.shape().area().squareMetres() / outerM2, 1e-4);
    assertEquals(1, read.shape().polygons().get(0).getNumInteriorRing());
  }

  @Test
  void altitudeAndForeignMembers_arePassedOver() {
    String text =
        "{\"type\":\"Feature\",\"bbox\":[0,0,1,1],\"extra\":{},\"properties\":null,\"geometry\":"
            + OPEN
            + "[0,0,12.5],[0.001,0,13],[0.001,0.001,14],[0,0.001,15],[0,0,12.5]]]}}";
    assertEquals(4, GeoOutline.read(text).shape().corners().size());
  }

  @Test
  void multiPolygonOfOne_isTaken() {
    String text =
        "{\"type\":\"MultiPolygon\",\"coordinates\":[[[[0,0],[0.001,0],[0.001,0.001],[0,0]]]]}";
    assertEquals(3, GeoOutline.read(text).shape().corners().size());
  }

  @Test
  void origin_isTheSouthWestCornerOfTheBounds_orAsGiven() {
    String text = square(-122.44, 37.76, 1e-4);
    GeoOutline read = GeoOutline.read(text);
    assertEquals(0, read.shape().bounds().getMinX(), 1e-5);
    assertEquals(0, read.shape().bounds().getMinY(), 1e-5);
    assertEquals(-122.44, read.origin().lonDeg(), 1e-9);
    assertEquals(37.76, read.origin().latDeg(), 1e-9);
    LonLat east = new LonLat(-122.4399, 37.76);
    Point corner = GeoOutline.read(text, Optional.of(east)).shape().corners().get(0);
    assertEquals(-read.shape().width().metres(), corner.x().metres(), 1e-4);
  }

  // in GeoJsonWriterTest and WktOutlineTest.

  // X-07, RFC 7946 section 3.1.9: what crosses 180 degrees is to be cut in two; a ring that runs
  // from 170 east to 170 west is such an uncut one, or spans the world.
  @Test
  void antimeridian_isRefused() {
    PlanException e = refused(OPEN + "[170,45],[-170,45],[-170,46],[170,46],[170,45]]]}");
    assertTrue(e.getMessage().contains("antimeridian"), e.getMessage());
  }

  // X-08, RFC 7946 section 4: the coordinates are WGS 84; a plan in feet is no GeoJSON.
  @Test
  void planInFeet_isRefused() {
    PlanException e = refused(OPEN + "[0,0],[0,200],[120,200],[120,0],[0,0]]]}");
    assertTrue(e.getMessage().contains("wktOutline"), e.getMessage());
  }

  @Test
  void deepNesting_isRefusedWithoutOverflow() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 200_000; i++) {
      text.append("{\"type\":\"Feature\",\"geometry\":");
    }
    assertEquals("SYNTAX", refused(text.toString()).problems().get(0).code().name());
  }
}
