package yardloom.sun.shade;

/**
 * Turns plan coordinates into the frame in which the sun moves simply.
 *
 * <p>Axes: x where meridian and celestial equator meet, y to the west, z to the north celestial
 * pole. In this frame the sun stands in direction (cos H, sin H, tan δ), H the hour angle (positive
 * after solar noon), δ the declination, at every latitude. Lengths and angles are kept; the frame
 * is left-handed, because hour angles run westwards.
 *
 * <p>Valid for any latitude. References: [1] J. Meeus, Astronomical Algorithms, 2nd ed.,
 * Willmann-Bell, 1998, ch. 13 (horizontal and equatorial coordinates; from memory).
 */
public final class EquatorialFrame {
  private final double[] matrix;

  /**
   * A frame.
   *
   * @param latitudeRad north positive
   * @param northRad bearing of true north on the plan, clockwise from the plan's up direction
   */
  public EquatorialFrame(double latitudeRad, double northRad) {
    double sinLat = StrictMath.sin(latitudeRad);
    double cosLat = StrictMath.cos(latitudeRad);
    double sinNorth = StrictMath.sin(northRad);
    double cosNorth = StrictMath.cos(northRad);
    // North is (sinNorth, cosNorth) on the plan, east is (cosNorth, -sinNorth).
    matrix =
        new double[] {
          -sinLat * sinNorth,
          -sinLat * cosNorth,
          cosLat,
          -cosNorth,
          sinNorth,
          0,
          cosLat * sinNorth,
          cosLat * cosNorth,
          sinLat
        };
  }

  /** The first coordinate of the plan vector (right, up the plan, above ground). */
  public double x(double planX, double planY, double up) {
    return matrix[0] * planX + matrix[1] * planY + matrix[2] * up;
  }

  double y(double planX, double planY, double up) {
    return matrix[3] * planX + matrix[4] * planY + matrix[5] * up;
  }

  public double z(double planX, double planY, double up) {
    return matrix[6] * planX + matrix[7] * planY + matrix[8] * up;
  }
}
