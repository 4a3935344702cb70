package yardloom.sun.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
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
import yardloom.sun.light.formula.ClearSky;
import yardloom.sun.position.SunYear;

/** Gives radiation on open ground by month. Gives nothing without a site. */
public final class RadiationCalculator implements Calculator {
  @Override
  public String id() {
    return "sun.radiation";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.RADIATION);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<SolarRadiation.Given> given =
        plan.said(RadiationWords.RADIATION).map(Attributes.Entry::value);
    plan.site().ifPresent(site -> out.give(YardFacts.RADIATION, of(site, given)));
  }

  private static SolarRadiation of(Site site, Optional<SolarRadiation.Given> given) {
    SunYear year = new SunYear(site.longitude().degrees());
    int[] days = SunYear.MEAN_DAYS.stream().mapToInt(SunYear::day).toArray();
    List<Double> above = new ArrayList<>();
    for (int day : days) {
      above.add(ClearSky.aboveAir(site.latitude().radians(), StrictMath.atan(year.tan(day)), day));
    }
    double elevationM = site.elevation().metres();
    List<Double> clear =
        IntStream.range(0, 12).mapToObj(m -> ClearSky.simple(above.get(m), elevationM)).toList();
    return new SolarRadiation(
        above,
        clear,
        "clear sky = (0.75 + 0.00002·elevation in m) × radiation above the air",
        Source.computed(
            "Crop Evapotranspiration, FAO Irrigation and Drainage Paper 56",
            "R. G. Allen, L. S. Pereira, D. Raes, M. Smith",
            1998,
            "eq. 21, 37"),
        given);
  }
}
