package yardloom.climate.et.formula;

/**
 * Reference evapotranspiration of short grass, mm per day.
 *
 * <p>Reproduces the worked examples of its source to their printed digits. Negative values occur in
 * cold damp air and mean dew.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 6 and examples 17, 18 and 20.
 *
 * @param meanC mean air temperature
 * @param netRadiationMj net radiation, MJ per square metre and day
 * @param soilHeatMj heat into the soil, MJ per square metre and day
 * @param windMs wind at 2 m, metres per second
 * @param saturationKpa mean saturation vapour pressure
 * @param vapourKpa actual vapour pressure
 * @param pressureKpa air pressure
 */
public record PenmanMonteith(
    double meanC,
    double netRadiationMj,
    double soilHeatMj,
    double windMs,
    double saturationKpa,
    double vapourKpa,
    double pressureKpa) {

  public double et0MmPerDay() {
    double slope = Air.slopeKpaPerC(meanC);
    double gamma = Air.psychrometricKpaPerC(pressureKpa);
    double radiation = 0.408 * slope * (netRadiationMj - soilHeatMj);
    double wind = gamma * 900 / (meanC + 273) * windMs * (saturationKpa - vapourKpa);
    return (radiation + wind) / (slope + gamma * (1 + 0.34 * windMs));
  }
}
