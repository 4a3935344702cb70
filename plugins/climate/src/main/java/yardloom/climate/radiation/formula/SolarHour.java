package yardloom.climate.radiation.formula;

/**
 * The sun of one hour above the atmosphere, at one place.
 *
 * <p>References: [1] The ASCE Standardized Reference Evapotranspiration Equation, ASCE-EWRI, 2005,
 * equations 48 to 58 (from memory, held by published program outputs); the same as FAO-56,
 * equations 28 to 33.
 *
 * @param sine sine of the sun's height at the middle of the hour; negative at night
 * @param radiationMj radiation above the air, MJ per square metre and hour
 */
public record SolarHour(double sine, double radiationMj) {
  private static final double SOLAR_CONSTANT = 4.92;

  /**
   * An hour.
   *
   * @param longitudeDeg east positive
   * @param middleUtc its middle, in hours of universal time on day {@code dayOfYear}
   */
  public static SolarHour of(
      double latitudeRad, double longitudeDeg, int dayOfYear, double middleUtc) {
    double b = 2 * Math.PI * (dayOfYear - 81) / 364;
    double seasonHours =
        0.1645 * StrictMath.sin(2 * b) - 0.1255 * StrictMath.cos(b) - 0.025 * StrictMath.sin(b);
    double solarHours = middleUtc + longitudeDeg / 15 + seasonHours;
    SolarDay day = SolarDay.of(latitudeRad, dayOfYear);
    double middle = StrictMath.IEEEremainder(Math.PI / 12 * (solarHours - 12), 2 * Math.PI);
    double sunset = day.sunsetAngleRad();
    double from = Math.max(-sunset, Math.min(sunset, middle - Math.PI / 24));
    double to = Math.max(-sunset, Math.min(sunset, middle + Math.PI / 24));
    double level = StrictMath.sin(latitudeRad) * StrictMath.sin(day.declinationRad());
    double turning = StrictMath.cos(latitudeRad) * StrictMath.cos(day.declinationRad());
    double radiation =
        12
            / Math.PI
            * SOLAR_CONSTANT
            * day.relativeDistance()
            * ((to - from) * level + turning * (StrictMath.sin(to) - StrictMath.sin(from)));
    return new SolarHour(
        level + turning * StrictMath.cos(middle), to > from ? Math.max(0, radiation) : 0);
  }
}
