package yardloom.sun.position;

/**
 * Length of the day and height of the sun on level open ground, in closed form.
 *
 * <p>Geometric: the sun's centre above 0°, no refraction, declination constant over the day. Upper
 * limb with refraction adds 9 to 10 minutes at 40° of latitude. Polar day is 24 h, polar night 0 h.
 *
 * <p>The declination is the almanac's, of {@link SunYear}: shade would show the half degree by
 * which FAO-56's fit is off, which reference evapotranspiration, in the climate plugin, keeps.
 *
 * <p>References: [1] R. G. Allen et al., Crop Evapotranspiration, FAO Irrigation and Drainage Paper
 * 56, 1998, eq. 25 and 34.
 */
public final class DayLength {
  private DayLength() {}

  /** The hour angle of sunset in radians, 0 to π. */
  public static double sunsetHourAngle(double latitudeRad, double declinationRad) {
    double cosine = -StrictMath.tan(latitudeRad) * StrictMath.tan(declinationRad);
    return StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /** The sun's elevation in radians at an hour angle. */
  public static double elevation(double latitudeRad, double declinationRad, double hourAngleRad) {
    double sine =
        StrictMath.sin(latitudeRad) * StrictMath.sin(declinationRad)
            + StrictMath.cos(latitudeRad)
                * StrictMath.cos(declinationRad)
                * StrictMath.cos(hourAngleRad);
    return StrictMath.asin(Math.max(-1, Math.min(1, sine)));
  }

  /** The sun's bearing in radians at an hour angle, clockwise from north, 0 to 2π. */
  public static double bearing(double latitudeRad, double declinationRad, double hourAngleRad) {
    double east = -StrictMath.cos(declinationRad) * StrictMath.sin(hourAngleRad);
    double north =
        StrictMath.sin(declinationRad) * StrictMath.cos(latitudeRad)
            - StrictMath.cos(declinationRad)
                * StrictMath.cos(hourAngleRad)
                * StrictMath.sin(latitudeRad);
    double bearing = StrictMath.atan2(east, north);
    return bearing < 0 ? bearing + 2 * StrictMath.PI : bearing;
  }
}
