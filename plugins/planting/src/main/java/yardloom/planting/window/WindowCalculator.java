package yardloom.planting.window;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.window.PlantingRules.Place;
import yardloom.planting.window.formula.PlantingTime.Frost;
import yardloom.planting.window.formula.PlantingTime.Offset;

/** Gives the usual days of each kind that is to be planted; nothing without frost dates. */
public final class WindowCalculator implements Calculator {
  /** Above this cool-season vegetables stop growing (page on cool-season vegetables, read). */
  private static final Temperature HOT = Temperature.fahrenheit(80);

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
    return Set.of(YardFacts.FROST, YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<FrostDates> frost = in.find(YardFacts.FROST);
    if (frost.isEmpty()) {
      return;
    }
    Place place = place(in.find(YardFacts.CLIMATE));
    for (Plant plant : in.get(PlantPlaces.KEY).toPlant().values()) {
      out.give(YardFacts.PLANTING_WINDOWS, window(plant, place, frost.get()));
    }
  }

  static Place place(Optional<ClimateNormals> climate) {
    if (climate.isEmpty()) {
      return new Place(true, true);
    }
    boolean hot = climate.get().hottestDays().filter(t -> t.compareTo(HOT) > 0).isPresent();
    return new Place(hot, climate.get().hasFrozenWinters());
  }

  private static PlantingWindow window(Plant plant, Place place, FrostDates frost) {
    List<PlantingWindow.Period> periods = new ArrayList<>();
    for (PlantingRules.Rule rule : PlantingRules.of(plant, place)) {
      periods.add(
          new PlantingWindow.Period(
              rule.time().how(),
              day(rule.time().from(), rule.source(), frost),
              isShort(rule, frost)
                  ? day(rule.time().from(), rule.source(), frost)
                  : day(rule.time().until(), rule.source(), frost)));
    }
    return new PlantingWindow(plant.name(), plant.phase(), periods);
  }

  /** Whether even what is planted on the first day does not ripen before the frost. */
  static boolean isShort(PlantingRules.Rule rule, FrostDates frost) {
    return rule.time().shortBy(frost.lastOfSpring().value(), frost.firstOfFall().value()) > 0;
  }

  private static Derived<MonthDay> day(Offset offset, Source source, FrostDates frost) {
    boolean last = offset.frost() == Frost.LAST;
    String named = last ? "last frost of spring" : "first frost of fall";
    Derived<MonthDay> from = last ? frost.lastOfSpring() : frost.firstOfFall();
    return Derived.by(named + " + days from then", source)
        .from(named, from)
        .from("days from then", offset.days())
        .gives(offset.day(frost.lastOfSpring().value(), frost.firstOfFall().value()));
  }
}
