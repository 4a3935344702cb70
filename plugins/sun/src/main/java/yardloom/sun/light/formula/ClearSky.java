package yardloom.sun.light.formula;

import yardloom.sun.position.DayLength;
import yardloom.sun.position.SunYear;

/**
 * Solar radiation on level ground under a clear sky, in MJ per square metre.
 *
 * <p>Direct and diffuse parts follow ASCE-EWRI's clear-sky index for clean air: K_B = 0.98
 * exp(-0.00146 P / sin β - 0.075 (W / sin β)^0.4), W = 0.14 eₐ P + 2.1 mm, K_D = 0.35 - 0.36 K_B
 * for K_B ≥ 0.15, else 0.18 + 0.82 K_B; sin β is held at 0.01 or above, below which nothing counts.
 * Valid for any latitude; polar night gives zero.
 *
 * <p>References: [1] The ASCE Standardized Reference Evapotranspiration Equation, ASCE-EWRI, 2005,
 * eq. D.1 to D.5 (through published program outputs); [2] R. G. Allen et al., Crop
 * Evapotranspiration, FAO Irrigation and Drainage Paper 56, 1998, eq. 7, 11, 21, 23, 37.
 */
public final class ClearSky {
  /** Solar constant in MJ per square metre and hour. */
  private static final double SOLAR_HOUR = 4.92;

  private static final double LOWEST_SINE = 0.01;

  private final double pressureKpa;
  private final double waterMm;

  /**
   * A sky.
   *
   * @param elevationM height above the sea
   * @param vapourKpa actual vapour pressure near the ground
   */
  public ClearSky(double elevationM, double vapourKpa) {
    pressureKpa = 101.3 * StrictMath.pow((293 - 0.0065 * elevationM) / 293, 5.26);
    waterMm = 0.14 * vapourKpa * pressureKpa + 2.1;
  }

  /** Vapour pressure of air saturated at a temperature, in kPa [2, eq. 11]. */
  public static double saturationKpa(double celsius) {
    return 0.6108 * StrictMath.exp(17.27 * celsius / (celsius + 237.3));
  }

  /** The inverse square of the relative distance to the sun on a day of the year from 0 [2]. */
  public static double distanceFactor(int day) {
    return 1 + 0.033 * StrictMath.cos(2 * StrictMath.PI / 365 * (day + 1));
  }

  /** Radiation above the air in a day [2, eq. 21], declination from {@link SunYear}. */
  public static double aboveAir(double latitudeRad, double declinationRad, int day) {
    double sunset = DayLength.sunsetHourAngle(latitudeRad, declinationRad);
    double mean =
        sunset * StrictMath.sin(latitudeRad) * StrictMath.sin(declinationRad)
            + StrictMath.cos(latitudeRad) * StrictMath.cos(declinationRad) * StrictMath.sin(sunset);
    return Math.max(0, 24 * 60 / StrictMath.PI * 0.0820 * distanceFactor(day) * mean);
  }

  /** Radiation under a clear sky in a day from that above the air [2, eq. 37]. */
  public static double simple(double aboveAir, double elevationM) {
    return (0.75 + 2e-5 * elevationM) * aboveAir;
  }

  /** Direct and diffuse radiation on level ground in an hour with the sun at one height. */
  public record Hour(double beam, double diffuse) {}

  /**
   * One hour.
   *
   * @param sine of the sun's elevation
   */
  public Hour hour(double sine, int day) {
    if (sine < LOWEST_SINE) {
      return new Hour(0, 0);
    }
    double above = SOLAR_HOUR * distanceFactor(day) * sine;
    double kb =
        0.98
            * StrictMath.exp(
                -0.00146 * pressureKpa / sine - 0.075 * StrictMath.pow(waterMm / sine, 0.4));
    double kd = kb >= 0.15 ? 0.35 - 0.36 * kb : 0.18 + 0.82 * kb;
    return new Hour(kb * above, kd * above);
  }
}
