package yardloom.climate.radiation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.et.formula.Air;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.climate.radiation.formula.SolarDay;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SolarRadiation;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Months;

/**
 * Gives radiation on open ground by month. Gives nothing without a site.
 *
 * <p>The air is taken to hold what it can hold at the night's lowest temperature (FAO-56 eq. 48),
 * without normals 1 kPa of vapour (a mild day; our own choice).
 */
public final class RadiationCalculator implements Calculator {
  private static final double USUAL_VAPOUR_KPA = 1;
  private static final Source FAO_56 =
      Source.computed(
          "Crop Evapotranspiration, FAO Irrigation and Drainage Paper 56",
          "R. G. Allen, L. S. Pereira, D. Raes, M. Smith",
          1998,
          "eq. 21, 37");

  @Override
  public String id() {
    return "climate.radiation";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.RADIATION);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<SolarRadiation.Given> given =
        plan.said(RadiationWords.RADIATION).map(Attributes.Entry::value);
    plan.site()
        .ifPresent(
            site -> out.give(YardFacts.RADIATION, of(site, in.find(YardFacts.CLIMATE), given)));
  }

  private static SolarRadiation of(
      Site site, Optional<ClimateNormals> climate, Optional<SolarRadiation.Given> given) {
    double elevationM = site.elevation().metres();
    double pressureKpa = Air.pressureKpa(elevationM);
    List<Double> above = new ArrayList<>();
    List<Double> clear = new ArrayList<>();
    List<SolarRadiation.Sky> skies = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      SolarDay day = SolarDay.of(site.latitude().radians(), Months.middleDay(m));
      above.add(day.radiationMj());
      clear.add(Radiation.clearSky(day.radiationMj(), elevationM));
      double waterMm = Air.precipitableWaterMm(vapourKpa(climate, m), pressureKpa);
      skies.add(new SolarRadiation.Sky(day.normalMjPerHour(), pressureKpa, waterMm));
    }
    return new SolarRadiation(
        above,
        clear,
        "clear sky = (0.75 + 0.00002·elevation in m) × radiation above the air",
        skies,
        FAO_56,
        given);
  }

  private static double vapourKpa(Optional<ClimateNormals> climate, int month) {
    return climate
        .flatMap(c -> c.months().get(month).dailyMin())
        .map(t -> Air.saturationKpa(t.celsius()))
        .orElse(USUAL_VAPOUR_KPA);
  }
}
