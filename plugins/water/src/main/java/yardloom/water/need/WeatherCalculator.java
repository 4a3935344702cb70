package yardloom.water.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;

/** Gives monthly reference evapotranspiration and effective rain; nothing without the former. */
public final class WeatherCalculator implements Calculator {
  @Override
  public String id() {
    return "water.weather";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(MonthlyWeather.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REFERENCE_ET);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    ClimateNormals climate = in.get(YardFacts.CLIMATE);
    EffectiveRain method = EffectiveRain.of(plan);
    in.find(YardFacts.REFERENCE_ET)
        .ifPresent(
            et ->
                out.give(
                    MonthlyWeather.KEY,
                    new MonthlyWeather(
                        et.months(),
                        rain(plan, climate, et.months(), method),
                        et.method(),
                        method)));
  }

  private static List<Derived<Length>> rain(
      Plan plan, ClimateNormals climate, List<Derived<Length>> et, EffectiveRain method) {
    List<Derived<Length>> rain = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      int month = m;
      Derived<Length> its = method.of(climate.months().get(m).rain(), climate.source(), et.get(m));
      rain.add(Fog.of(plan).map(f -> Fog.with(f, month, its)).orElse(its));
    }
    return rain;
  }
}
