package yardloom.climate.et;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.et.formula.Hargreaves;
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
 * Gives monthly reference evapotranspiration: by Penman-Monteith where radiation is given, else by
 * Hargreaves; nothing without a site or a daily temperature range.
 */
public final class EtCalculator implements Calculator {
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
    boolean ranges =
        climate.months().stream()
            .allMatch(m -> m.dailyMax().isPresent() && m.dailyMin().isPresent());
    if (plan.site().isEmpty() || !ranges) {
      return;
    }
    Site site = plan.site().get();
    Optional<SolarRadiation> radiation =
        in.find(YardFacts.RADIATION).filter(r -> r.given().isPresent());
    List<Derived<Length>> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(
          radiation.isPresent()
              ? RadiationEt.of(site, climate, radiation.get(), m)
              : referenceEt(site, climate, m));
    }
    String method =
        radiation.isPresent()
            ? "Penman-Monteith (FAO-56 eq. 6) with given radiation, wind taken as 2 m/s and dew"
                + " point as the daily minimum"
            : "Hargreaves (FAO-56 eq. 52) from mean temperature and daily range";
    out.give(YardFacts.REFERENCE_ET, new ReferenceEt(months, method));
  }

  private static Derived<Length> referenceEt(Site site, ClimateNormals climate, int month) {
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
