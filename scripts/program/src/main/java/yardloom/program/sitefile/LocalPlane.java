package yardloom.program.sitefile;

import java.util.Locale;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.CoordinateTransform;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.ProjCoordinate;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;

/**
 * The plan's plane on the globe: transverse Mercator on WGS 84 with its origin, and scale 1, at the
 * plan's origin. Within 10 km lengths are true to a few parts in a million. The projection is built
 * once, as that takes far longer than to project a point.
 */
public final class LocalPlane {
  private static final double REACH_M = 10_000;

  private final Angle north;
  private final CoordinateTransform toPlane;
  private final CoordinateTransform toGlobe;

  /**
   * The plane that touches the globe at the plan's origin.
   *
   * @param latitude of the plan's origin
   * @param longitude of the plan's origin
   * @param north bearing of true north on the plan, clockwise from up
   */
  public LocalPlane(Angle latitude, Angle longitude, Angle north) {
    this.north = north;
    CRSFactory systems = new CRSFactory();
    CoordinateReferenceSystem globe =
        systems.createFromParameters("globe", "+proj=longlat +datum=WGS84 +no_defs");
    CoordinateReferenceSystem plane =
        systems.createFromParameters(
            "plane",
            String.format(
                Locale.ROOT,
                "+proj=tmerc +lat_0=%.12f +lon_0=%.12f +k=1 +x_0=0 +y_0=0 +datum=WGS84 +units=m"
                    + " +no_defs",
                latitude.degrees(),
                longitude.degrees()));
    CoordinateTransformFactory transforms = new CoordinateTransformFactory();
    toPlane = transforms.createTransform(globe, plane);
    toGlobe = transforms.createTransform(plane, globe);
  }

  /**
   * The plan's point at a position.
   *
   * @throws PlanException (OUT_OF_RANGE) if the position is none, or further than 10 km away
   */
  public Point toPlan(double longitudeDeg, double latitudeDeg) {
    if (!(Math.abs(latitudeDeg) <= 90) || !(Math.abs(longitudeDeg) <= 180)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the position ["
              + longitudeDeg
              + ", "
              + latitudeDeg
              + "] is not on the globe; GeoJSON gives longitude first, then latitude");
    }
    ProjCoordinate out = new ProjCoordinate();
    toPlane.transform(new ProjCoordinate(longitudeDeg, latitudeDeg), out);
    if (!(Math.hypot(out.x, out.y) <= REACH_M)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the position ["
              + longitudeDeg
              + ", "
              + latitudeDeg
              + "] lies more than 10 km from the plan's origin; are longitude and latitude swapped?");
    }
    return Point.metres(out.x, out.y).turned(north.negative(), Point.metres(0, 0));
  }

  /** Longitude and latitude in degrees of a point of the plan. */
  public double[] toGlobe(Point point) {
    Point upright = point.turned(north, Point.metres(0, 0));
    ProjCoordinate out = new ProjCoordinate();
    toGlobe.transform(new ProjCoordinate(upright.x().metres(), upright.y().metres()), out);
    return new double[] {out.x, out.y};
  }
}
