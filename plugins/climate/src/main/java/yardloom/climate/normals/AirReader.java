package yardloom.climate.normals;

import java.util.ArrayList;
import java.util.List;
import yardloom.climate.et.formula.Air;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Temperature;

/**
 * Wind, vapour and wet days that a plan states beside its normals: twelve plain numbers each, or
 * nothing (null).
 *
 * <p>Errors: PlanException (WRONG_TYPE, OUT_OF_RANGE, CONTRADICTION) without a place, naming row
 * and month.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, equation 19 (vapour from mean relative humidity).
 *
 * @param windHeightM how high the wind was measured
 */
record AirReader(ClimateNormals normals, NormalsReader.Units units, double windHeightM) {
  private static final double MOST_WIND_MS = 20;

  ClimateNormals with(List<?> wind, List<?> dew, List<?> humidity, List<?> wetDays) {
    if (dew != null && humidity != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "`dew:` and `humidity:` both say how moist the air is; give one of them");
    }
    ClimateNormals.Air air =
        new ClimateNormals.Air(
            wind == null ? List.of() : wind(wind),
            dew != null ? dew(dew) : humidity != null ? humidity(humidity) : List.of(),
            wetDays == null ? List.of() : wetDays(wetDays),
            normals.source());
    return new ClimateNormals(
        normals.place(), normals.months(), normals.source(), normals.temperatureRangeSource(), air);
  }

  private List<Double> wind(List<?> given) {
    boolean metric = units == NormalsReader.Units.MM_CELSIUS;
    List<Double> months = new ArrayList<>();
    for (double value : NormalsReader.numbers("wind", given)) {
      double ms = metric ? value : value * Air.MS_PER_MPH;
      if (!(ms >= 0 && ms <= MOST_WIND_MS)) {
        throw NormalsReader.outOfRange(
            "wind", months.size(), value, metric ? "0 to 20 m/s" : "0 to 45 mph");
      }
      months.add(Air.windAt2m(ms, windHeightM));
    }
    return months;
  }

  private List<Temperature> dew(List<?> given) {
    List<Temperature> months = new ArrayList<>();
    for (double value : NormalsReader.numbers("dew", given)) {
      int m = months.size();
      Temperature dew = NormalsReader.temperature("dew", m, value, units);
      Temperature mean = normals.months().get(m).mean();
      if (dew.compareTo(mean) > 0) {
        throw new PlanException(
            ProblemCode.CONTRADICTION,
            "`dew:` of "
                + Months.name(m)
                + ", "
                + value
                + ", is above the mean temperature; check both rows");
      }
      months.add(dew);
    }
    return months;
  }

  private List<Temperature> humidity(List<?> given) {
    List<Temperature> months = new ArrayList<>();
    for (double percent : NormalsReader.numbers("humidity", given)) {
      int m = months.size();
      if (!(percent >= 1 && percent <= 100)) {
        throw NormalsReader.outOfRange("humidity", m, percent, "1 to 100 percent");
      }
      ClimateNormals.Month month = normals.months().get(m);
      double saturation =
          Air.meanSaturationKpa(
              month.dailyMax().orElseThrow().celsius(), month.dailyMin().orElseThrow().celsius());
      months.add(Temperature.celsius(Air.dewPointC(percent / 100 * saturation)));
    }
    return months;
  }

  private List<Double> wetDays(List<?> given) {
    List<Double> months = new ArrayList<>();
    for (double days : NormalsReader.numbers("wetDays", given)) {
      int m = months.size();
      boolean isWet = normals.months().get(m).rain().metres() > 0;
      if (!(days >= 0 && days <= Months.days(m)) || isWet != days > 0) {
        throw NormalsReader.outOfRange(
            "wetDays",
            m,
            days,
            isWet ? "above 0, up to the days of the month" : "0, since no rain is given");
      }
      months.add(days);
    }
    return months;
  }
}
