package yardloom.scripts.site;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * An outline read from GeoJSON, in plan metres, north up.
 *
 * <p>The projection is centred on the outline's centroid. The plan's origin is a given place, or
 * the south-west corner of the outline's bounds. Holes are kept; a lot refuses them.
 *
 * <p>Errors: PlanException (SYNTAX, BAD_SHAPE, OUT_OF_RANGE) without a place; among others for
 * crossing rings, more or fewer polygons than one, and outlines of more than 10 km.
 *
 * @param origin where the plan's origin lies on earth
 */
public record GeoOutline(Shape shape, LonLat origin) {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Reads GeoJSON text; the origin is the south-west corner of the bounds. */
  public static GeoOutline read(String geoJson) {
    return read(geoJson, Optional.empty());
  }

  /** Reads GeoJSON text; the plan's origin lies at {@code origin}, if given. */
  public static GeoOutline read(String geoJson, Optional<LonLat> origin) {
    List<List<LonLat>> rings = GeoJsonPolygon.read(geoJson).rings();
    LonLat centroid = centroid(rings.get(0));
    GeoFrame frame = GeoFrame.about(centroid);
    LonLat zero = origin.orElseGet(() -> southWest(rings.get(0), frame));
    GeoFrame placed = frame.withOrigin(zero);
    Shape shape = Shape.polygon(corners(rings.get(0), placed));
    for (List<LonLat> hole : rings.subList(1, rings.size())) {
      shape = shape.minus(Shape.polygon(corners(hole, placed)));
    }
    if (Math.max(shape.width().metres(), shape.depth().metres()) > GeoFrame.REACH_M) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the outline is "
              + shape.width()
              + " by "
              + shape.depth()
              + "; a plan holds one yard of at most 10 km");
    }
    return new GeoOutline(shape, zero);
  }

  private static List<Point> corners(List<LonLat> ring, GeoFrame frame) {
    return ring.subList(0, ring.size() - 1).stream().map(frame::toPlan).toList();
  }

  /** In degrees; it only has to lie in the middle. */
  private static LonLat centroid(List<LonLat> ring) {
    Coordinate[] positions =
        ring.stream().map(p -> new Coordinate(p.lonDeg(), p.latDeg())).toArray(Coordinate[]::new);
    Coordinate middle = FACTORY.createPolygon(positions).getCentroid().getCoordinate();
    return new LonLat(middle.x, middle.y);
  }

  private static LonLat southWest(List<LonLat> ring, GeoFrame frame) {
    Envelope bounds = new Envelope();
    ring.forEach(p -> bounds.expandToInclude(frame.toPlan(p).coordinate()));
    return frame.toEarth(Point.metres(bounds.getMinX(), bounds.getMinY()));
  }
}
