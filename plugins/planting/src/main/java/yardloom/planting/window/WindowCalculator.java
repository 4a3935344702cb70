package yardloom.planting.window;

import java.util.Set;
import yardloom.facts.FrostDates;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.window.formula.PlantingTime;

/** Gives the usual days of each kind that is to be planted; nothing without frost dates. */
public final class WindowCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.windows";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    in.find(YardFacts.FROST)
        .ifPresent(
            frost ->
                in.get(PlantPlaces.KEY)
                    .toPlant()
                    .values()
                    .forEach(p -> out.give(YardFacts.PLANTING_WINDOWS, window(p, frost))));
  }

  private static PlantingWindow window(Plant plant, FrostDates frost) {
    PlantingTime.Times times =
        PlantingTime.of(plant.season(), frost.lastOfSpring().value(), frost.firstOfFall().value());
    Derived.Builder why =
        Derived.by("days before or after usual frost", PlantingTime.SOURCE)
            .from("last frost of spring", frost.lastOfSpring())
            .from("first frost of fall", frost.firstOfFall());
    return new PlantingWindow(
        plant.name(), why.gives(times.springFrom()), times.fallUntil().map(why::gives));
  }
}
