package yardloom.climate.et;

import java.util.Optional;
import yardloom.climate.et.formula.Air;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Temperature;

/**
 * Monthly reference evapotranspiration by the standardized equation from normals, and from what
 * stands in for what they lack, as FAO-56 advises for missing data: wind 2 m/s, the dew point by
 * the night's minimum, radiation by the range of temperature.
 *
 * @param given radiation that the plan states, if it does
 * @param isDry whether the climate is arid or semi-arid
 */
record MonthlyEt(
    Site site, ClimateNormals climate, Optional<SolarRadiation.Given> given, boolean isDry) {
  static final double USUAL_WIND_MS = 2;

  private static final Source SOURCE =
      Source.computed(
          "The ASCE Standardized Reference Evapotranspiration Equation",
          "ASCE-EWRI; FAO Irrigation and Drainage Paper 56 for missing data",
          2005,
          "equation 1, appendix D; FAO-56 equations 48 and 50");

  /** For the notes: what was taken, and whence. */
  String method() {
    ClimateNormals.Air air = climate.air();
    return "the ASCE standardized equation (short grass) with "
        + (given.isPresent() ? "given radiation" : "radiation from the daily range")
        + ", "
        + (air.windMs().isEmpty() ? "wind taken as 2 m/s" : "given wind")
        + " and "
        + (air.dewPoints().isEmpty()
            ? "dew point as the daily minimum" + (isDry ? " less 2 °C, the climate being dry" : "")
            : "given dew point");
  }

  /** The depth of a month, 0 (January) to 11; never negative. */
  Derived<Length> of(Surface surface, int month) {
    AirOfDay air = air(month);
    double solarMj = given.map(g -> g.monthly().get(month)).orElseGet(air::solarFromRangeMj);
    double mm = air.mmPerDay(surface, solarMj) * Months.days(month);
    ClimateNormals.Month means = climate.months().get(month);
    return Derived.by(
            "days × Penman-Monteith, standardized, "
                + (surface == Surface.SHORT ? "short grass" : "tall alfalfa"),
            SOURCE)
        .from("days", Months.days(month))
        .from("radiation, MJ/m² a day", solarMj)
        .from(
            "radiation source",
            given.map(g -> g.source().cite()).orElse("0.16 × √(daily range) × that above the air"))
        .from("radiation under a clear sky, MJ/m² a day", air.clearSkyMj())
        .from("wind at 2 m, m/s", air.windMs())
        .from("dew point", dewPoint(month))
        .from("daily maximum", means.dailyMax().orElseThrow())
        .from("daily minimum", means.dailyMin().orElseThrow())
        .from("daily range source", climate.temperatureRangeSource().cite())
        .from("elevation", site.elevation())
        .gives(Length.millimetres(mm));
  }

  Temperature dewPoint(int month) {
    return climate.air().dewPoints().isEmpty()
        ? Temperature.celsius(
            Air.dewPointByMinimum(
                climate.months().get(month).dailyMin().orElseThrow().celsius(), isDry))
        : climate.air().dewPoints().get(month);
  }

  private AirOfDay air(int month) {
    ClimateNormals.Month means = climate.months().get(month);
    double before = climate.months().get((month + 11) % 12).mean().celsius();
    double after = climate.months().get((month + 1) % 12).mean().celsius();
    return new AirOfDay(
        site.latitude().radians(),
        site.elevation().metres(),
        Months.middleDay(month),
        means.dailyMax().orElseThrow().celsius(),
        means.dailyMin().orElseThrow().celsius(),
        dewPoint(month).celsius(),
        climate.air().windMs().isEmpty() ? USUAL_WIND_MS : climate.air().windMs().get(month),
        Radiation.soilHeat(before, after));
  }
}
