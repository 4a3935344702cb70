package yardloom.climate.radiation.formula;

/**
 * The sun of one day above the atmosphere, at one latitude.
 *
 * <p>Valid for latitudes -90 to 90 and days 1 to 366. In polar night radiation and day length are
 * 0, in polar day the day has 24 hours.
 *
 * <p>Declination and distance are the published fits of FAO-56, so that reference
 * evapotranspiration reproduces its printed examples; shade asks for more and takes the sun's place
 * from an almanac, in the sun plugin. The fit of the declination is off by up to half a degree.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 21 to 25.
 *
 * @param relativeDistance inverse relative distance of earth and sun, squared form d_r
 * @param declinationRad declination of the sun
 * @param sunsetAngleRad hour angle of sunset
 * @param radiationMj extraterrestrial radiation, MJ per square metre and day
 */
public record SolarDay(
    double relativeDistance, double declinationRad, double sunsetAngleRad, double radiationMj) {
  /** Solar constant, MJ per square metre and minute. */
  private static final double SOLAR_CONSTANT = 0.0820;

  /** Millimetres of water that one MJ per square metre evaporates. */
  public static final double MM_PER_MJ = 0.408;

  public static SolarDay of(double latitudeRad, int dayOfYear) {
    double angle = 2 * Math.PI / 365 * dayOfYear;
    double dr = 1 + 0.033 * StrictMath.cos(angle);
    double declination = 0.409 * StrictMath.sin(angle - 1.39);
    double cosine = -StrictMath.tan(latitudeRad) * StrictMath.tan(declination);
    double sunset = StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
    double ra =
        24
            * 60
            / Math.PI
            * SOLAR_CONSTANT
            * dr
            * (sunset * StrictMath.sin(latitudeRad) * StrictMath.sin(declination)
                + StrictMath.cos(latitudeRad)
                    * StrictMath.cos(declination)
                    * StrictMath.sin(sunset));
    return new SolarDay(dr, declination, sunset, Math.max(0, ra));
  }

  /** The radiation as a depth of evaporated water, mm per day. */
  public double radiationMm() {
    return radiationMj * MM_PER_MJ;
  }

  /** On a surface square to the sun, MJ per square metre and hour. */
  public double normalMjPerHour() {
    return 60 * SOLAR_CONSTANT * relativeDistance;
  }
}
