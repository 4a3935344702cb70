package yardloom.water.calc.demand;

/**
 * Adjusts crop and landscape coefficients to a place.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 62 (from memory). [2] University of California Cooperative
 * Extension and Department of Water Resources, A Guide to Estimating Irrigation Water Needs of
 * Landscape Plantings, 2000.
 */
public final class CropCoefficient {
  private CropCoefficient() {}

  /**
   * The middle coefficient in wind and humidity other than 2 m/s and 45 percent.
   *
   * @param windMs wind at 2 m, 1 to 6 m/s
   * @param rhMin mean daily least humidity, 20 to 80 percent
   * @param heightM crop height, 0.1 to 10 m
   */
  public static double adjusted(double middle, double windMs, double rhMin, double heightM) {
    if (heightM <= 0) {
      throw new IllegalArgumentException("crop height " + heightM + " m");
    }
    return middle + (0.04 * (windMs - 2) - 0.004 * (rhMin - 45)) * StrictMath.pow(heightM / 3, 0.3);
  }

  /** The coefficient of an ornamental planting: of its species, density and microclimate. */
  public static double landscape(double species, double density, double microclimate) {
    return species * density * microclimate;
  }
}
