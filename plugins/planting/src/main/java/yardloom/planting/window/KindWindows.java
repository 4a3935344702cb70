package yardloom.planting.window;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.window.PlantingRules.Place;
import yardloom.planting.window.formula.PlantingTime.Frost;
import yardloom.planting.window.formula.PlantingTime.Offset;

/** All days on which a kind may be planted here, whatever it is bought as. */
final class KindWindows {
  /** Above this cool-season vegetables stop growing (page on cool-season vegetables, read). */
  private static final Temperature HOT = Temperature.fahrenheit(80);

  private KindWindows() {}

  /** Empty where nothing is known of frost. */
  static Optional<PlantingWindow> of(Plant plant, Facts in) {
    Place place = place(in.find(YardFacts.CLIMATE));
    return in.find(YardFacts.FROST).map(frost -> window(plant, place, frost));
  }

  /** Whether it is a period of bare roots. */
  static boolean isBare(PlantingWindow.Period period) {
    return period.how().startsWith("bare root");
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
