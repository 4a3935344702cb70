package yardloom.planting.window;

import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
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
  private static final int DAYS_OF_YEAR = 365;

  /** Any year without a leap day. */
  private static final int YEAR = 2021;

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
    return new PlantingWindow(
        plant.name(),
        day("last frost of spring", frost.lastOfSpring(), times.springFrom()),
        times.fallUntil().map(d -> day("first frost of fall", frost.firstOfFall(), d)));
  }

  private static Derived<MonthDay> day(String frost, Derived<MonthDay> from, MonthDay day) {
    long days = ChronoUnit.DAYS.between(from.value().atYear(YEAR), day.atYear(YEAR));
    // The nearer way round, where the two lie on either side of New Year.
    long near = Math.floorMod(days + DAYS_OF_YEAR / 2, (long) DAYS_OF_YEAR) - DAYS_OF_YEAR / 2;
    return Derived.by(frost + " + days from then", PlantingTime.SOURCE)
        .from(frost, from)
        .from("days from then", (int) near)
        .gives(day);
  }
}
