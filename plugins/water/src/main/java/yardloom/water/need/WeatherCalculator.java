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
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.water.need.formula.CropwatRain;

/** Gives monthly reference evapotranspiration and effective rain; nothing without the former. */
public final class WeatherCalculator implements Calculator {
  static final Source CROPWAT =
      Source.computed("CROPWAT, USDA SCS effective rainfall", "FAO", 0, "as quoted by pyCropWat");

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
    in.find(YardFacts.REFERENCE_ET)
        .ifPresent(
            et ->
                out.give(
                    MonthlyWeather.KEY,
                    new MonthlyWeather(et.months(), rain(climate), et.method())));
  }

  private static List<Derived<Length>> rain(ClimateNormals climate) {
    List<Derived<Length>> rain = new ArrayList<>();
    for (ClimateNormals.Month month : climate.months()) {
      rain.add(
          Derived.by("rain × (125 − 0.2 rain) / 125, in mm; over 250 mm 125 + 0.1 rain", CROPWAT)
              .from("rain", month.rain())
              .from("rain source", climate.source().cite())
              .gives(Length.millimetres(CropwatRain.effectiveMm(month.rain().millimetres()))));
    }
    return rain;
  }
}
