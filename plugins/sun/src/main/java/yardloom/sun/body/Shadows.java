package yardloom.sun.body;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import yardloom.facts.Obstacle;
import yardloom.kernel.geom.Shape;

/**
 * The ground that obstacles shade at one moment.
 *
 * <p>Each body is convex, so its shadow is the hull of its corners carried along the rays to the
 * ground: L = h / (tan e + s), s the rise of the ground along the shadow. Crowns are carried by
 * {@link #OUTLINE} points of the ring where the light grazes them; the outline lies inside the true
 * ellipse by less than 0.3 % of its size. No shadow when the sun is below the ground's plane or
 * lower than {@link #LOWEST_DEG}, where shadows run out of any plan.
 *
 * <p>References: own derivation: a ray that falls at elevation e over ground that rises s per metre
 * along it meets that ground after L = h / (tan e + s); on level ground the familiar h / tan e.
 */
public final class Shadows {
  static final int OUTLINE = 48;

  /** The sun's mean diameter. */
  static final double DISC_DEG = 0.533;

  /** The lowest sun for which outlines are drawn. */
  public static final double LOWEST_DEG = 2;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Ground ground;
  private final double east;
  private final double north;
  private final double up;
  private final double against;

  /**
   * A moment.
   *
   * @param bearingRad of the sun, clockwise from true north
   * @param northRad bearing of true north on the plan
   */
  public Shadows(Ground ground, double bearingRad, double elevationRad, double northRad) {
    this.ground = ground;
    double flat = StrictMath.cos(elevationRad);
    east = flat * StrictMath.sin(bearingRad + northRad);
    north = flat * StrictMath.cos(bearingRad + northRad);
    up = StrictMath.sin(elevationRad);
    against = up - ground.heightM(east, north);
  }

  /**
   * How wide the soft edge of a shadow on level ground is: the sun's disc of {@link #DISC_DEG}
   * neither shines nor is hidden in full there. For a sun that stands higher than its own radius.
   */
  public static double edgeWidthM(double heightM, double elevationDeg) {
    double low = StrictMath.toRadians(elevationDeg - DISC_DEG / 2);
    double high = StrictMath.toRadians(elevationDeg + DISC_DEG / 2);
    return heightM * (1 / StrictMath.tan(low) - 1 / StrictMath.tan(high));
  }

  /** Whether there are shadows to draw. */
  public boolean isDay() {
    return up >= StrictMath.sin(StrictMath.toRadians(LOWEST_DEG)) && against > 0.01;
  }

  /** All that the obstacles shade, the ground under them included. */
  public Shape of(List<Obstacle> obstacles) {
    if (!isDay()) {
      return Shape.EMPTY;
    }
    List<Shape> parts = new ArrayList<>();
    for (Obstacle obstacle : obstacles) {
      for (PlanBody body : PlanBodies.of(obstacle, ground)) {
        parts.add(of(body));
      }
    }
    return Shape.union(parts);
  }

  private Shape of(PlanBody body) {
    List<Coordinate> points = new ArrayList<>();
    if (body instanceof PlanBody.Hull hull) {
      for (double[] corner : hull.corners()) {
        // Roots below the ground cast nothing: they are lifted to it.
        double heightM = Math.max(corner[2], ground.heightM(corner[0], corner[1]));
        points.add(carried(corner[0], corner[1], heightM));
      }
    } else if (body instanceof PlanBody.Egg egg) {
      grazed(egg, points);
    }
    Coordinate[] all = points.toArray(new Coordinate[0]);
    return Shape.of(new ConvexHull(all, FACTORY).getConvexHull());
  }

  private Coordinate carried(double x, double y, double heightM) {
    double far = (heightM - ground.heightM(x, y)) / against;
    return new Coordinate(x - far * east, y - far * north);
  }

  private void grazed(PlanBody.Egg egg, List<Coordinate> points) {
    double half = (egg.topM() - egg.bottomM()) / 2;
    double middle = egg.bottomM() + half;
    // With heights scaled so that the crown is a ball, light grazes it on a great circle.
    double scaledUp = up * egg.radiusM() / half;
    double flat = StrictMath.hypot(east, north);
    double length = StrictMath.hypot(flat, scaledUp);
    double ux = flat < 1e-9 ? 1 : -north / flat;
    double uy = flat < 1e-9 ? 0 : east / flat;
    double vx = -uy * scaledUp / length;
    double vy = ux * scaledUp / length;
    double vz = flat / length;
    for (int i = 0; i < OUTLINE; i++) {
      double turn = 2 * StrictMath.PI * i / OUTLINE;
      double c = StrictMath.cos(turn) * egg.radiusM();
      double s = StrictMath.sin(turn) * egg.radiusM();
      points.add(
          carried(
              egg.x() + c * ux + s * vx,
              egg.y() + c * uy + s * vy,
              middle + s * vz * half / egg.radiusM()));
    }
  }
}
