package yardloom.climate.et;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.et.formula.Hargreaves;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.radiation.formula.SolarDay;
import yardloom.facts.ClimateNormals;
import yardloom.facts.ReferenceEt;
import yardloom.facts.SolarRadiation;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;

/**
 * Gives monthly reference evapotranspiration: by the standardized equation where radiation, wind or
 * dew point is given, else by Hargreaves; nothing without a site or a daily temperature range.
 */
public final class EtCalculator implements Calculator {
  private static final double SEMI_ARID = 0.5;

  private static final Source HARGREAVES =
      Source.computed(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO (Allen, Pereira, Raes, Smith)",
          1998,
          "equations 21 to 25 and 52");

  @Override
  public String id() {
    return "climate.reference-et";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.RADIATION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.REFERENCE_ET);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    ClimateNormals climate = in.get(YardFacts.CLIMATE);
    if (plan.site().isEmpty() || !hasRanges(climate)) {
      return;
    }
    Site site = plan.site().get();
    Optional<SolarRadiation.Given> given =
        in.find(YardFacts.RADIATION).flatMap(SolarRadiation::given);
    List<Derived<Length>> months = new ArrayList<>();
    List<Derived<Length>> tall = new ArrayList<>();
    if (given.isEmpty()
        && climate.air().windMs().isEmpty()
        && climate.air().dewPoints().isEmpty()) {
      for (int m = 0; m < 12; m++) {
        months.add(hargreaves(site, climate, m));
      }
      out.give(
          YardFacts.REFERENCE_ET,
          new ReferenceEt(
              months, tall, "Hargreaves (FAO-56 eq. 52) from mean temperature and daily range"));
      return;
    }
    MonthlyEt et = new MonthlyEt(site, climate, given, isDry(site, climate));
    for (int m = 0; m < 12; m++) {
      months.add(et.of(Surface.SHORT, m));
      tall.add(et.of(Surface.TALL, m));
    }
    out.give(YardFacts.REFERENCE_ET, new ReferenceEt(months, tall, et.method()));
  }

  private static boolean hasRanges(ClimateNormals climate) {
    return climate.months().stream()
        .allMatch(m -> m.dailyMax().isPresent() && m.dailyMin().isPresent());
  }

  /**
   * Whether the climate is arid or semi-arid: less rain in a year than half of what the air takes
   * (the ratio of the United Nations' environment programme, from memory).
   */
  static boolean isDry(Site site, ClimateNormals climate) {
    if (!hasRanges(climate)) {
      return false;
    }
    double rainMm = 0;
    double etMm = 0;
    for (int m = 0; m < 12; m++) {
      rainMm += climate.months().get(m).rain().millimetres();
      etMm += hargreaves(site, climate, m).value().millimetres();
    }
    return rainMm < SEMI_ARID * etMm;
  }

  private static Derived<Length> hargreaves(Site site, ClimateNormals climate, int month) {
    ClimateNormals.Month means = climate.months().get(month);
    double maxC = means.dailyMax().orElseThrow().celsius();
    double minC = means.dailyMin().orElseThrow().celsius();
    double meanC = means.mean().celsius();
    double ra = SolarDay.of(site.latitude().radians(), Months.middleDay(month)).radiationMm();
    double mm = Hargreaves.et0MmPerDay(meanC, maxC, minC, ra) * Months.days(month);
    return Derived.by(
            "days × 0.0023 × (mean temperature in °C + 17.8) × √(daily maximum in °C − daily minimum in"
                + " °C) × extraterrestrial radiation",
            HARGREAVES)
        .from("days", Months.days(month))
        .from("mean temperature", means.mean())
        .from("mean temperature source", climate.source().cite())
        .from("daily maximum", means.dailyMax().orElseThrow())
        .from("daily minimum", means.dailyMin().orElseThrow())
        .from("daily range source", climate.temperatureRangeSource().cite())
        .from("extraterrestrial radiation", Length.millimetres(ra))
        .from("latitude", site.latitude())
        .gives(Length.millimetres(mm));
  }
}
