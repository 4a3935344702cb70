package yardloom.climate.et.formula;

import yardloom.climate.radiation.formula.SolarDay;

/**
 * Reference evapotranspiration from temperatures alone, mm per day.
 *
 * <p>Meant for means of five days or more; over months within about 15 percent of Penman-Monteith
 * in most climates, worse in humid or windy ones. Never negative: 0 when the mean is below -17.8 °C
 * or the daily range is not positive.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 52 and example 20.
 */
public final class Hargreaves {
  private Hargreaves() {}

  /** With {@code radiationMm} as {@link SolarDay#radiationMm()} gives it. */
  public static double et0MmPerDay(double meanC, double maxC, double minC, double radiationMm) {
    double range = Math.max(0, maxC - minC);
    return 0.0023 * Math.max(0, meanC + 17.8) * Math.sqrt(range) * radiationMm;
  }
}
