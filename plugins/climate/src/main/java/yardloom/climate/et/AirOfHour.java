package yardloom.climate.et;

import yardloom.climate.et.formula.Air;
import yardloom.climate.et.formula.StandardizedEt;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.radiation.formula.ClearSky;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.climate.radiation.formula.SolarHour;

/**
 * The air of one hour, from what was measured to reference evapotranspiration.
 *
 * @param sun of that hour
 * @param windMs at 2 m
 * @param solarMj global radiation, MJ per square metre and hour
 */
record AirOfHour(
    SolarHour sun, double elevationM, double airC, double dewC, double windMs, double solarMj) {
  /** The height of the sun from which the measured radiation tells of cloud: 0.3 rad. */
  private static final double CLOUD_SINE = Math.sin(0.3);

  double clearSkyMj() {
    double pressure = Air.pressureKpa(elevationM);
    return ClearSky.hourMj(
        sun, pressure, Air.precipitableWaterMm(Air.saturationKpa(dewC), pressure));
  }

  /** The cloud factor of this hour; the last one's where the sun is low or down. */
  double cloud(double lastCloud) {
    return sun.sine() >= CLOUD_SINE ? Radiation.cloud(solarMj, clearSkyMj()) : lastCloud;
  }

  double netMj(double cloud) {
    return Radiation.netShortwave(solarMj)
        - Radiation.netLongwaveOfHour(airC, Air.saturationKpa(dewC), cloud);
  }

  /** May be a little below zero on nights with dew. */
  double mmPerHour(Surface surface, double cloud) {
    return new StandardizedEt(
            airC,
            netMj(cloud),
            0,
            windMs,
            Air.saturationKpa(airC),
            Air.saturationKpa(dewC),
            Air.pressureKpa(elevationM))
        .mmPerHour(surface);
  }
}
