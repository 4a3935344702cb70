package yardloom.climate.radiation.formula;

/**
 * Radiation at the ground after FAO-56, MJ per square metre and day.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 37, 38, 39 and 43.
 */
public final class Radiation {
  /** Reflected by the reference grass. */
  public static final double ALBEDO = 0.23;

  private static final double STEFAN_BOLTZMANN = 4.903e-9;

  private Radiation() {}

  /** Under a clear sky, from the radiation above the air [1, eq. 37]. */
  public static double clearSky(double radiationMj, double elevationM) {
    return (0.75 + 2e-5 * elevationM) * radiationMj;
  }

  /** What the reference grass keeps [1, eq. 38]. */
  public static double netShortwave(double solarMj) {
    return (1 - ALBEDO) * solarMj;
  }

  /** Net outgoing longwave radiation; the cloudiness ratio is held to 1. */
  public static double netLongwave(
      double maxC, double minC, double vapourKpa, double solarMj, double clearSkyMj) {
    double warm = StrictMath.pow(maxC + 273.16, 4);
    double cool = StrictMath.pow(minC + 273.16, 4);
    double ratio = clearSkyMj <= 0 ? 1 : Math.min(1, solarMj / clearSkyMj);
    return STEFAN_BOLTZMANN
        * (warm + cool)
        / 2
        * (0.34 - 0.14 * Math.sqrt(vapourKpa))
        * (1.35 * ratio - 0.35);
  }

  /** Heat into the soil in a month, from the months before and after. */
  public static double soilHeat(double beforeC, double afterC) {
    return 0.07 * (afterC - beforeC);
  }
}
