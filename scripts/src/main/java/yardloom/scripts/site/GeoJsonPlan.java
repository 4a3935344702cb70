package yardloom.scripts.site;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * A plan as GeoJSON: the lot and every element that covers ground, with kind and name.
 *
 * <p>Positions have seven decimals, about a centimetre. Outer rings run counter-clockwise, holes
 * clockwise. The plan's origin is taken to lie at the site's latitude and longitude; a plan without
 * a site has no place on the globe and is refused, for a plan in feet is no GeoJSON.
 *
 * <p>References: [1] RFC 7946, The GeoJSON Format.
 */
public final class GeoJsonPlan {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final int DECIMALS = 7;

  private GeoJsonPlan() {}

  /**
   * The text.
   *
   * @throws PlanException (MISSING_OPTION) if the plan has no site
   */
  public static String write(Plan plan) {
    Site site =
        plan.site()
            .orElseThrow(
                () ->
                    new PlanException(
                        ProblemCode.MISSING_OPTION,
                        "GeoJSON needs the place on the globe; give it with `site`"));
    LocalPlane plane = new LocalPlane(site.latitude(), site.longitude(), site.north());
    ObjectNode root = MAPPER.createObjectNode().put("type", "FeatureCollection");
    ArrayNode features = root.putArray("features");
    plan.lot().ifPresent(lot -> feature(features, "lot", "lot", lot.shape(), plane));
    for (Element element : plan.elements()) {
      if (!element.shape().isEmpty()) {
        feature(features, element.id().kind().word(), element.id().name(), element.shape(), plane);
      }
    }
    return root.toPrettyString() + "\n";
  }

  private static void feature(
      ArrayNode features, String kind, String name, Shape shape, LocalPlane plane) {
    ObjectNode feature = features.addObject().put("type", "Feature");
    feature.putObject("properties").put("kind", kind).put("name", name);
    ObjectNode geometry = feature.putObject("geometry");
    boolean one = shape.polygons().size() == 1;
    geometry.put("type", one ? "Polygon" : "MultiPolygon");
    ArrayNode coordinates = geometry.putArray("coordinates");
    for (Polygon polygon : shape.polygons()) {
      ArrayNode rings = one ? coordinates : coordinates.addArray();
      ring(rings, polygon.getExteriorRing(), true, plane);
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        ring(rings, polygon.getInteriorRingN(i), false, plane);
      }
    }
  }

  private static void ring(
      ArrayNode rings, LinearRing ring, boolean counterClockwise, LocalPlane plane) {
    Coordinate[] c = ring.getCoordinates();
    boolean turn = Orientation.isCCW(c) != counterClockwise;
    ArrayNode positions = rings.addArray();
    for (int i = 0; i < c.length; i++) {
      Coordinate at = c[turn ? c.length - 1 - i : i];
      double[] globe = plane.toGlobe(Point.metres(at.x, at.y));
      positions.addArray().add(rounded(globe[0])).add(rounded(globe[1]));
    }
  }

  private static BigDecimal rounded(double degrees) {
    return BigDecimal.valueOf(degrees).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
