package yardloom.climate.et.formula;

/**
 * Pressure and vapour of the air after FAO-56; kilopascals and degrees Celsius.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 7, 8, 11, 12, 13, 47 and 48. [2] The ASCE Standardized
 * Reference Evapotranspiration Equation, ASCE-EWRI, 2005, equation D.3 (through published program
 * outputs).
 */
public final class Air {
  /** A mile an hour, exactly. */
  public static final double MS_PER_MPH = 0.44704;

  private Air() {}

  /** Mean pressure at an elevation. */
  public static double pressureKpa(double elevationM) {
    return 101.3 * StrictMath.pow((293 - 0.0065 * elevationM) / 293, 5.26);
  }

  /** The psychrometric constant, kPa per °C. */
  public static double psychrometricKpaPerC(double pressureKpa) {
    return 0.000665 * pressureKpa;
  }

  /** Vapour pressure of saturated air. */
  public static double saturationKpa(double airC) {
    return 0.6108 * StrictMath.exp(17.27 * airC / (airC + 237.3));
  }

  /** Slope of the saturation curve, kPa per °C. */
  public static double slopeKpaPerC(double airC) {
    double away = airC + 237.3;
    return 4098 * saturationKpa(airC) / (away * away);
  }

  /** Mean saturation pressure of a day: of both extremes, not of their mean. */
  public static double meanSaturationKpa(double maxC, double minC) {
    return (saturationKpa(maxC) + saturationKpa(minC)) / 2;
  }

  /** Water in the column of air above the ground, as a depth in mm [2]. */
  public static double precipitableWaterMm(double vapourKpa, double pressureKpa) {
    return 0.14 * vapourKpa * pressureKpa + 2.1;
  }

  /** The temperature at which air with this much vapour is saturated: eq. 11 turned round. */
  public static double dewPointC(double vapourKpa) {
    double log = StrictMath.log(vapourKpa / 0.6108);
    return 237.3 * log / (17.27 - log);
  }

  /** Wind at 2 m from wind measured at another height over short grass [1, eq. 47]. */
  public static double windAt2m(double speed, double heightM) {
    return speed * 4.87 / StrictMath.log(67.8 * heightM - 5.42);
  }

  /**
   * The dew point where nobody measured it: the night's lowest temperature, in dry places 2 °C less
   * (sources say 2 to 3, and 2 to 4; the least of them) [1, eq. 48 and its text].
   */
  public static double dewPointByMinimum(double minC, boolean isDry) {
    return isDry ? minC - 2 : minC;
  }
}
