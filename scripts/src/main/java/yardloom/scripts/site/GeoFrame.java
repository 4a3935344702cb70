package yardloom.scripts.site;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.proj4j.ProjCoordinate;
import org.locationtech.proj4j.datum.Ellipsoid;
import org.locationtech.proj4j.proj.TransverseMercatorProjection;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;

/**
 * Turns longitude and latitude into plan metres and back.
 *
 * <p>A transverse Mercator on the WGS 84 ellipsoid with its centre in the middle of the lot and
 * scale 1 there. Within {@link #REACH_M} of the centre a length is true within 1.3 parts in a
 * million (the scale grows with distance² / 2R²), so on any yard the error lies below a millimetre.
 *
 * <p>Valid between 80° south and 84° north, the range of the universal transverse Mercator; beyond
 * it and further away than {@link #REACH_M} points are refused.
 *
 * <p>References: J. P. Snyder, Map Projections: A Working Manual, US Geological Survey Professional
 * Paper 1395, 1987, pages 60–64 (ellipsoidal transverse Mercator, scale factor equation 8-11).
 */
public final class GeoFrame {
  /** How far a yard may reach from the centre, in metres. */
  public static final double REACH_M = 10_000;

  private static final double SOUTHERNMOST_DEG = -80;
  private static final double NORTHERNMOST_DEG = 84;

  private final TransverseMercatorProjection projection;
  private final double originEastM;
  private final double originNorthM;
  private final double sinNorth;
  private final double cosNorth;

  private GeoFrame(
      TransverseMercatorProjection projection, double eastM, double northM, Angle north) {
    this.projection = projection;
    this.originEastM = eastM;
    this.originNorthM = northM;
    this.sinNorth = StrictMath.sin(north.radians());
    this.cosNorth = StrictMath.cos(north.radians());
  }

  /** About {@code centre}, which is also the plan's origin; north is up. */
  public static GeoFrame about(LonLat centre) {
    requireLatitude(centre);
    TransverseMercatorProjection made = new TransverseMercatorProjection();
    made.setEllipsoid(Ellipsoid.WGS84);
    made.setProjectionLatitudeDegrees(centre.latDeg());
    made.setProjectionLongitudeDegrees(centre.lonDeg());
    made.setScaleFactor(1);
    made.initialize();
    return new GeoFrame(made, 0, 0, Angle.degrees(0));
  }

  /**
   * The frame whose plan origin lies at {@code origin} and whose centre lies at the plan's point
   * {@code centre}: what {@link GeoOutline} reads with, so that writing is its inverse.
   *
   * @param north the bearing of true north on the plan, clockwise from up
   */
  public static GeoFrame placed(LonLat origin, Point centre, Angle north) {
    // The centre is known in plan metres only; two rounds put it on earth within a micrometre.
    GeoFrame frame = about(origin).turned(north);
    for (int i = 0; i < 2; i++) {
      frame = about(frame.toEarth(centre)).withOrigin(origin).turned(north);
    }
    return frame;
  }

  /** The same projection, the plan's origin at another place. */
  public GeoFrame withOrigin(LonLat origin) {
    Coordinate at = project(origin);
    return new GeoFrame(projection, at.x, at.y, Angle.degrees(0));
  }

  private GeoFrame turned(Angle north) {
    return new GeoFrame(projection, originEastM, originNorthM, north);
  }

  /** The point of the plan at a place on earth, to the hundredth of a millimetre. */
  public Point toPlan(LonLat place) {
    Coordinate at = project(place);
    double eastM = at.x - originEastM;
    double northM = at.y - originNorthM;
    if (!(Math.hypot(eastM, northM) <= 2 * REACH_M)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "longitude "
              + place.lonDeg()
              + ", latitude "
              + place.latDeg()
              + " lies more than "
              + Math.round(2 * REACH_M / 1000)
              + " km from the plan's origin; a plan holds one yard");
    }
    return Point.metres(
        rounded(eastM * cosNorth + northM * sinNorth), rounded(northM * cosNorth - eastM * sinNorth));
  }

  /** The place on earth of a point of the plan. */
  public LonLat toEarth(Point point) {
    double xM = point.x().metres();
    double yM = point.y().metres();
    ProjCoordinate from =
        new ProjCoordinate(
            originEastM + xM * cosNorth - yM * sinNorth,
            originNorthM + xM * sinNorth + yM * cosNorth);
    ProjCoordinate to = projection.inverseProject(from, new ProjCoordinate());
    return new LonLat(to.x, to.y);
  }

  private Coordinate project(LonLat place) {
    requireLatitude(place);
    ProjCoordinate to =
        projection.project(
            new ProjCoordinate(place.lonDeg(), place.latDeg()), new ProjCoordinate());
    return new Coordinate(to.x, to.y);
  }

  private static void requireLatitude(LonLat place) {
    if (place.latDeg() < SOUTHERNMOST_DEG || place.latDeg() > NORTHERNMOST_DEG) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "latitude "
              + place.latDeg()
              + " is too near a pole for the plan's projection, which holds from -80 to 84 degrees");
    }
  }

  /** The last digits of a projection differ between machines; a hundredth of a millimetre does not. */
  private static double rounded(double metres) {
    return Math.rint(metres * 1e5) / 1e5;
  }
}
