package yardloom.program.sitefile;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;

/**
 * An outline read from GeoJSON, in plan metres.
 *
 * <p>The projection is centred on the plan's origin, so that {@link GeoJsonWriter} is its inverse:
 * a given place, or the south-west corner of the outline's bounds. Holes are kept; a lot refuses
 * them.
 *
 * <p>Errors: PlanException (SYNTAX, BAD_SHAPE, OUT_OF_RANGE) without a place; among others for
 * crossing rings, more or fewer polygons than one, and positions more than 10 km from the origin.
 *
 * @param origin where the plan's origin lies on earth
 */
public record GeoOutline(Shape shape, LonLat origin) {
  /** Reads GeoJSON text; the origin is the south-west corner of the bounds. */
  public static GeoOutline read(String geoJson) {
    return read(geoJson, Optional.empty());
  }

  /** Reads GeoJSON text; the plan's origin lies at {@code origin}, if given. */
  public static GeoOutline read(String geoJson, Optional<LonLat> origin) {
    return read(geoJson, origin, Angle.ZERO);
  }

  /**
   * The same on a plan whose true north does not lie up.
   *
   * @param north bearing of true north on the plan
   */
  public static GeoOutline read(String geoJson, Optional<LonLat> origin, Angle north) {
    GeoJsonPolygon polygon = GeoJsonPolygon.read(geoJson);
    LonLat zero = origin.orElseGet(() -> southWest(polygon.rings().get(0)));
    LocalPlane plane =
        new LocalPlane(Angle.degrees(zero.latDeg()), Angle.degrees(zero.lonDeg()), north);
    Shape shape = Shape.polygon(polygon.corners(0, plane));
    for (int hole = 1; hole < polygon.rings().size(); hole++) {
      shape = shape.minus(Shape.polygon(polygon.corners(hole, plane)));
    }
    return new GeoOutline(shape, zero);
  }

  private static LonLat southWest(List<LonLat> ring) {
    return new LonLat(
        ring.stream().mapToDouble(LonLat::lonDeg).min().orElseThrow(),
        ring.stream().mapToDouble(LonLat::latDeg).min().orElseThrow());
  }
}
