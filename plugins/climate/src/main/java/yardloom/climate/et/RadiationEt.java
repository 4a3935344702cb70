package yardloom.climate.et;

import yardloom.climate.et.formula.Air;
import yardloom.climate.et.formula.PenmanMonteith;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/**
 * Monthly reference evapotranspiration where radiation is known and wind and humidity are not: the
 * dew point is taken as the daily minimum and wind as 2 m/s, as FAO-56 advises for missing data.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equations 6, 38 to 40, 43 and 48 and example 20.
 */
final class RadiationEt {
  private static final double WIND_MS = 2;
  private static final Source SOURCE =
      Source.computed(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO (Allen, Pereira, Raes, Smith)",
          1998,
          "equations 6, 38 to 40, 43 and 48");

  private RadiationEt() {}

  /** The depth of a month, 0 (January) to 11; never negative. */
  static Derived<Length> of(
      Site site, ClimateNormals climate, SolarRadiation radiation, int month) {
    ClimateNormals.Month means = climate.months().get(month);
    SolarRadiation.Given given = radiation.given().orElseThrow();
    double solarMj = given.monthly().get(month);
    double mm =
        Math.max(
                0,
                mmPerDay(
                    means.dailyMax().orElseThrow().celsius(),
                    means.dailyMin().orElseThrow().celsius(),
                    solarMj,
                    radiation.clearSky().get(month),
                    soilHeatMj(climate, month),
                    site.elevation().metres()))
            * Months.days(month);
    return Derived.by(
            "days × Penman-Monteith, dew point = daily minimum, wind 2 m/s at 2 m", SOURCE)
        .from("days", Months.days(month))
        .from("radiation, MJ/m² a day", solarMj)
        .from("radiation source", given.source().cite())
        .from("radiation under a clear sky, MJ/m² a day", radiation.clearSky().get(month))
        .from("clear sky by", radiation.method())
        .from("daily maximum", means.dailyMax().orElseThrow())
        .from("daily minimum", means.dailyMin().orElseThrow())
        .from("daily range source", climate.temperatureRangeSource().cite())
        .from("elevation", site.elevation())
        .gives(Length.millimetres(mm));
  }

  static double mmPerDay(
      double maxC,
      double minC,
      double solarMj,
      double clearSkyMj,
      double soilHeatMj,
      double elevationM) {
    double vapourKpa = Air.saturationKpa(minC);
    double net =
        Radiation.netShortwave(solarMj)
            - Radiation.netLongwave(maxC, minC, vapourKpa, solarMj, clearSkyMj);
    return new PenmanMonteith(
            (maxC + minC) / 2,
            net,
            soilHeatMj,
            WIND_MS,
            Air.meanSaturationKpa(maxC, minC),
            vapourKpa,
            Air.pressureKpa(elevationM))
        .et0MmPerDay();
  }

  private static double soilHeatMj(ClimateNormals climate, int month) {
    double before = climate.months().get((month + 11) % 12).mean().celsius();
    double after = climate.months().get((month + 1) % 12).mean().celsius();
    return Radiation.soilHeat(before, after);
  }
}
