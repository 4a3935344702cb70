package yardloom.scripts.site;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * The corners of one polygon in GeoJSON text: a Polygon, a Feature of one, or a collection with
 * one.
 *
 * <p>References: [1] RFC 7946, The GeoJSON Format, sections 3.1.6 and 4.
 */
public final class GeoJsonOutline {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private GeoJsonOutline() {}

  /**
   * The corners in order, without repeating the first.
   *
   * @throws PlanException (SYNTAX) if the text is no such GeoJSON, (BAD_SHAPE) if the ring is open,
   *     has holes or too few positions
   */
  public static List<Point> read(String text, LocalPlane plane) {
    JsonNode root;
    try {
      root = MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          "the GeoJSON cannot be read: "
              + e.getOriginalMessage()
              + " (line "
              + e.getLocation().getLineNr()
              + ")");
    }
    List<JsonNode> polygons = new ArrayList<>();
    collect(root, polygons);
    if (polygons.size() != 1) {
      throw new PlanException(
          ProblemCode.SYNTAX, "the GeoJSON must hold one polygon, it holds " + polygons.size());
    }
    JsonNode rings = polygons.get(0).path("coordinates");
    if (rings.size() != 1) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "the polygon must be one ring without holes, it has " + rings.size() + " rings");
    }
    return ring(rings.get(0), plane);
  }

  private static void collect(JsonNode node, List<JsonNode> polygons) {
    switch (node.path("type").asText()) {
      case "Polygon" -> polygons.add(node);
      case "Feature" -> collect(node.path("geometry"), polygons);
      case "FeatureCollection" -> node.path("features").forEach(f -> collect(f, polygons));
      case "GeometryCollection" -> node.path("geometries").forEach(g -> collect(g, polygons));
      default -> {
        // Points and lines beside the outline are no concern of ours.
      }
    }
  }

  private static List<Point> ring(JsonNode ring, LocalPlane plane) {
    if (ring.size() < 4 || !ring.get(0).equals(ring.get(ring.size() - 1))) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          "a ring needs at least four positions, the last the same as the first");
    }
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i + 1 < ring.size(); i++) {
      JsonNode position = ring.get(i);
      if (!position.path(0).isNumber() || !position.path(1).isNumber()) {
        throw new PlanException(
            ProblemCode.SYNTAX, "position " + (i + 1) + " of the ring is not a pair of numbers");
      }
      corners.add(plane.toPlan(position.get(0).asDouble(), position.get(1).asDouble()));
    }
    return corners;
  }
}
