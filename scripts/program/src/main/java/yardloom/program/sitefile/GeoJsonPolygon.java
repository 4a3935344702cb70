package yardloom.program.sitefile;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * The one polygon of a GeoJSON text, as rings of longitude and latitude, each closed; the first is
 * the outside. Altitude, properties and foreign members are passed over; winding is not asked.
 *
 * <p>Errors: PlanException (SYNTAX, BAD_SHAPE, OUT_OF_RANGE) without a place.
 *
 * <p>References: RFC 7946, The GeoJSON Format, IETF, 2016, sections 3.1.1 (positions), 3.1.6
 * (rings), 3.1.9 (antimeridian), 3.2, 3.3 (features) and 4 (coordinate reference system).
 */
record GeoJsonPolygon(List<List<LonLat>> rings) {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  static GeoJsonPolygon read(String text) {
    JsonNode root;
    try {
      root = MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      throw wrong(
          ProblemCode.SYNTAX,
          "the GeoJSON text is no well-formed JSON"
              + (at == null
                  ? ""
                  : ", near its line " + at.getLineNr() + " column " + at.getColumnNr())
              + "; write the file again from the program it came from");
    }
    requireWgs84(root);
    List<JsonNode> polygons = new ArrayList<>();
    collect(root, polygons);
    if (polygons.size() != 1) {
      throw wrong(
          ProblemCode.SYNTAX,
          "one polygon is needed, the GeoJSON text has "
              + polygons.size()
              + "; keep the one of the lot and delete the others");
    }
    return new GeoJsonPolygon(rings(polygons.get(0)));
  }

  /** The corners of a ring in the order of the text, without repeating the first. */
  List<Point> corners(int ring, LocalPlane plane) {
    List<LonLat> closed = rings.get(ring);
    return closed.subList(0, closed.size() - 1).stream()
        .map(p -> plane.toPlan(p.lonDeg(), p.latDeg()))
        .toList();
  }

  /** GeoJSON of 2008 could name another coordinate system; RFC 7946 section 4 allows one only. */
  private static void requireWgs84(JsonNode root) {
    JsonNode crs = root.path("crs");
    String name = crs.path("properties").path("name").asText("");
    if (!crs.isMissingNode()
        && !crs.isNull()
        && !name.contains("CRS84")
        && !name.contains(":4326")) {
      throw wrong(
          ProblemCode.BAD_SHAPE,
          "the GeoJSON text says that it uses the coordinate system '"
              + name
              + "'; only longitude and latitude (WGS 84) can be read, export it again as that");
    }
  }

  /** The coordinates of every polygon below {@code node}. */
  private static void collect(JsonNode node, List<JsonNode> polygons) {
    String type = node.path("type").asText("");
    switch (type) {
      case "FeatureCollection" -> node.path("features").forEach(f -> collect(f, polygons));
      case "Feature" -> {
        if (!node.path("geometry").isNull()) {
          collect(node.path("geometry"), polygons);
        }
      }
      case "GeometryCollection" -> node.path("geometries").forEach(g -> collect(g, polygons));
      case "Polygon" -> polygons.add(node.path("coordinates"));
      case "MultiPolygon" -> node.path("coordinates").forEach(polygons::add);
      case "Point", "MultiPoint", "LineString", "MultiLineString" -> {
        // Not an outline: a survey mark or a line beside the polygon that is wanted.
      }
      default ->
          throw wrong(
              ProblemCode.SYNTAX,
              "GeoJSON needs a type such as Polygon, Feature or FeatureCollection, got '"
                  + type
                  + "'");
    }
  }

  private static List<List<LonLat>> rings(JsonNode coordinates) {
    List<List<LonLat>> rings = new ArrayList<>();
    for (JsonNode ring : coordinates) {
      rings.add(ring(ring));
    }
    if (rings.isEmpty()) {
      throw wrong(ProblemCode.BAD_SHAPE, "the polygon has no ring; its coordinates are empty");
    }
    return rings;
  }

  private static List<LonLat> ring(JsonNode node) {
    List<LonLat> ring = new ArrayList<>();
    for (JsonNode position : node) {
      ring.add(position(position));
    }
    if (ring.size() < 4) {
      throw wrong(
          ProblemCode.BAD_SHAPE,
          "a ring has four or more positions, the last like the first; got " + ring.size());
    }
    LonLat first = ring.get(0);
    LonLat last = ring.get(ring.size() - 1);
    if (!first.equals(last)) {
      throw wrong(
          ProblemCode.BAD_SHAPE,
          "the ring is not closed: it starts at "
              + show(first)
              + " and ends at "
              + show(last)
              + "; repeat the first position at the end, digit for digit");
    }
    double west = ring.stream().mapToDouble(LonLat::lonDeg).min().orElseThrow();
    double east = ring.stream().mapToDouble(LonLat::lonDeg).max().orElseThrow();
    if (east - west > 180) {
      throw wrong(
          ProblemCode.BAD_SHAPE,
          "the ring runs over the antimeridian (180 degrees of longitude); such a lot cannot be read,"
              + " give it as `wktOutline` in metres");
    }
    return List.copyOf(ring);
  }

  private static LonLat position(JsonNode node) {
    if (node.size() < 2 || !node.path(0).isNumber() || !node.path(1).isNumber()) {
      throw wrong(
          ProblemCode.BAD_SHAPE,
          "a position is [longitude, latitude] in degrees; got " + shortened(node.toString()));
    }
    return new LonLat(node.path(0).doubleValue(), node.path(1).doubleValue());
  }

  private static String shortened(String text) {
    return text.length() <= 40 ? text : text.substring(0, 40) + "…";
  }

  private static String show(LonLat place) {
    return "[" + place.lonDeg() + ", " + place.latDeg() + "]";
  }

  private static PlanException wrong(ProblemCode code, String message) {
    return new PlanException(code, message);
  }
}
