package yardloom.climate.radiation.formula;

/**
 * Radiation under a clear sky from the height of the sun and the water and pressure of the air, MJ
 * per square metre and day: the full form of the standard, which sees dry and high places.
 *
 * <p>The air is taken to be clean (turbidity 1). The sine of the sun's mean height is held to 0.1,
 * so that polar winter gives a finite share of nothing.
 *
 * <p>References: [1] The ASCE Standardized Reference Evapotranspiration Equation, ASCE-EWRI, 2005,
 * appendix D, equations D.1 to D.5 (through published program outputs).
 */
public final class ClearSky {
  private static final double LEAST_SINE = 0.1;
  private static final double LEAST_HOUR_SINE = 0.01;

  private ClearSky() {}

  /**
   * Over a day.
   *
   * @param day the sun above the air
   * @param waterMm water in the column of air
   */
  public static double dayMj(
      SolarDay day, double latitudeRad, int dayOfYear, double pressureKpa, double waterMm) {
    double season = StrictMath.sin(2 * Math.PI / 365 * dayOfYear - 1.39);
    double sine =
        Math.max(
            LEAST_SINE,
            StrictMath.sin(0.85 + 0.3 * latitudeRad * season - 0.42 * latitudeRad * latitudeRad));
    return share(sine, pressureKpa, waterMm) * day.radiationMj();
  }

  /** Over an hour, with the sun above the horizon; 0 without. */
  public static double hourMj(SolarHour hour, double pressureKpa, double waterMm) {
    return hour.sine() <= 0
        ? 0
        : share(Math.max(LEAST_HOUR_SINE, hour.sine()), pressureKpa, waterMm) * hour.radiationMj();
  }

  /** Beam and sky light, as a share of what comes above the air. */
  private static double share(double sine, double pressureKpa, double waterMm) {
    double beam =
        0.98
            * StrictMath.exp(
                -0.00146 * pressureKpa / sine - 0.075 * StrictMath.pow(waterMm / sine, 0.4));
    double diffuse = beam >= 0.15 ? 0.35 - 0.36 * beam : 0.18 + 0.82 * beam;
    return beam + diffuse;
  }
}
