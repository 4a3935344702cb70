package yardloom.climate.et;

import yardloom.climate.et.formula.Air;
import yardloom.climate.et.formula.StandardizedEt;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.radiation.formula.ClearSky;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.climate.radiation.formula.SolarDay;

/**
 * The air of a day, or of the mean day of a month, at one place: from what was measured to
 * reference evapotranspiration.
 *
 * @param dayOfYear 1 to 366
 * @param windMs at 2 m
 * @param soilHeatMj heat into the soil, MJ per square metre and day; 0 for single days
 */
record AirOfDay(
    double latitudeRad,
    double elevationM,
    int dayOfYear,
    double maxC,
    double minC,
    double dewC,
    double windMs,
    double soilHeatMj) {
  /** Radiation at the ground without cloud, MJ per square metre and day. */
  double clearSkyMj() {
    double pressure = Air.pressureKpa(elevationM);
    double waterMm = Air.precipitableWaterMm(Air.saturationKpa(dewC), pressure);
    return ClearSky.dayMj(sun(), latitudeRad, dayOfYear, pressure, waterMm);
  }

  /** Radiation at the ground where nobody measured it, from the range of temperature. */
  double solarFromRangeMj() {
    return Radiation.fromRange(maxC, minC, sun().radiationMj(), clearSkyMj());
  }

  /** Never negative. */
  double mmPerDay(Surface surface, double solarMj) {
    double vapour = Air.saturationKpa(dewC);
    double net =
        Radiation.netShortwave(solarMj)
            - Radiation.netLongwave(maxC, minC, vapour, solarMj, clearSkyMj());
    StandardizedEt et =
        new StandardizedEt(
            (maxC + minC) / 2,
            net,
            soilHeatMj,
            windMs,
            Air.meanSaturationKpa(maxC, minC),
            vapour,
            Air.pressureKpa(elevationM));
    return Math.max(0, et.mmPerDay(surface));
  }

  private SolarDay sun() {
    return SolarDay.of(latitudeRad, dayOfYear);
  }
}
