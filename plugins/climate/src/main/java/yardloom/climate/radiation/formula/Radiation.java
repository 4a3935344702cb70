package yardloom.climate.radiation.formula;

/**
 * Radiation at the ground after FAO-56, MJ per square metre and day.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 37, 38, 39, 43 and 50. [2] The ASCE Standardized Reference
 * Evapotranspiration Equation, ASCE-EWRI, 2005, equation 18 (from memory).
 */
public final class Radiation {
  /** Reflected by the reference grass. */
  public static final double ALBEDO = 0.23;

  private static final double STEFAN_BOLTZMANN = 4.903e-9;

  private static final double INLAND = 0.16;

  private static final double MOST_CLOUD = 0.3;

  private Radiation() {}

  /** Under a clear sky, from the radiation above the air [1, eq. 37]. */
  public static double clearSky(double radiationMj, double elevationM) {
    return (0.75 + 2e-5 * elevationM) * radiationMj;
  }

  /** What the reference grass keeps [1, eq. 38]. */
  public static double netShortwave(double solarMj) {
    return (1 - ALBEDO) * solarMj;
  }

  /**
   * From the daily range of temperature [1, eq. 50], held to a clear sky; inland, where winds from
   * the sea do not level the range (by the sea 0.19 takes the place of 0.16).
   */
  public static double fromRange(double maxC, double minC, double radiationMj, double clearMj) {
    return Math.min(clearMj, INLAND * Math.sqrt(Math.max(0, maxC - minC)) * radiationMj);
  }

  /**
   * Net outgoing longwave radiation; the ratio that stands for cloud is held from 0.3 to 1, as the
   * standard has it.
   */
  public static double netLongwave(
      double maxC, double minC, double vapourKpa, double solarMj, double clearSkyMj) {
    double warm = StrictMath.pow(maxC + 273.16, 4);
    double cool = StrictMath.pow(minC + 273.16, 4);
    return STEFAN_BOLTZMANN
        * (warm + cool)
        / 2
        * (0.34 - 0.14 * Math.sqrt(vapourKpa))
        * cloud(solarMj, clearSkyMj);
  }

  /** The cloud factor of an hour, 0.05 to 1; meaningful with the sun well above the horizon. */
  public static double cloud(double solarMj, double clearSkyMj) {
    double ratio = clearSkyMj <= 0 ? 1 : Math.max(MOST_CLOUD, Math.min(1, solarMj / clearSkyMj));
    return 1.35 * ratio - 0.35;
  }

  /** Net outgoing longwave radiation of an hour with a known {@link #cloud} factor. */
  public static double netLongwaveOfHour(double airC, double vapourKpa, double cloud) {
    return STEFAN_BOLTZMANN
        / 24
        * StrictMath.pow(airC + 273.16, 4)
        * (0.34 - 0.14 * Math.sqrt(vapourKpa))
        * cloud;
  }

  /** Heat into the soil in a month, from the months before and after. */
  public static double soilHeat(double beforeC, double afterC) {
    return 0.07 * (afterC - beforeC);
  }
}
