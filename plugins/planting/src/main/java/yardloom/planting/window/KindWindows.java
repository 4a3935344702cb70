package yardloom.planting.window;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.window.PlantingRules.Place;
import yardloom.planting.window.formula.DrySummer;
import yardloom.planting.window.formula.PlantingTime;
import yardloom.planting.window.formula.PlantingTime.Frost;
import yardloom.planting.window.formula.PlantingTime.Offset;
import yardloom.planting.year.GrowingYear;

/** All days on which a kind may be planted here, whatever it is bought as. */
final class KindWindows {
  /** Above this cool-season vegetables stop growing (page on cool-season vegetables, read). */
  private static final Temperature HOT = Temperature.fahrenheit(80);

  private final GrowingYear year;
  private final Place place;

  private KindWindows(GrowingYear year, Place place) {
    this.year = year;
    this.place = place;
  }

  /** Empty where neither frost is known nor the climate without it. */
  static Optional<KindWindows> of(Facts in) {
    return GrowingYear.of(in).map(year -> new KindWindows(year, place(in, year)));
  }

  /** What the climate is like; as in a continental one where nothing is known of it. */
  private static Place place(Facts in, GrowingYear year) {
    Optional<ClimateNormals> climate = in.find(YardFacts.CLIMATE);
    if (climate.isEmpty()) {
      return new Place(true, true, false, false);
    }
    boolean hot = climate.get().hottestDays().filter(t -> t.compareTo(HOT) > 0).isPresent();
    return new Place(
        hot,
        climate.get().hasFrozenWinters(),
        !year.hasFrost(),
        DrySummer.is(
            climate.get().months().stream().map(m -> m.rain().millimetres()).toList(),
            climate.get().meansC()));
  }

  PlantingWindow of(Plant plant) {
    return of(plant, PlantingRules.of(plant, place));
  }

  /** The same for a crop that takes so many days, as one of its varieties. */
  PlantingWindow of(Plant plant, int cropDays) {
    return of(plant, PlantingRules.of(plant, place, cropDays));
  }

  private PlantingWindow of(Plant plant, List<PlantingRules.Rule> rules) {
    List<PlantingWindow.Period> periods = new ArrayList<>();
    for (PlantingRules.Rule usual : rules) {
      PlantingRules.Rule rule = warm(plant, usual);
      Offset until = shortBy(rule) > 0 ? rule.time().from() : rule.time().until();
      periods.add(
          new PlantingWindow.Period(
              rule.time().how(),
              rule.equals(usual)
                  ? day(rule.time().from(), rule.source())
                  : year.warm().orElseThrow(),
              day(until, rule.source())));
    }
    return new PlantingWindow(plant.name(), plant.phase(), periods);
  }

  /** The first rule by which a kind ripens too late even if planted on the first day. */
  Optional<PlantingRules.Rule> tooShort(Plant plant) {
    return PlantingRules.of(plant, place).stream()
        .map(rule -> warm(plant, rule))
        .filter(rule -> shortBy(rule) > 0)
        .findFirst();
  }

  /** The rule from the first warm day on, where a tender kind has to wait for it. */
  private PlantingRules.Rule warm(Plant plant, PlantingRules.Rule rule) {
    Offset from = rule.time().from();
    if (!GrowingYear.isTender(plant)
        || from.frost() != Frost.LAST
        || from.days() >= year.daysToWarmth()) {
      return rule;
    }
    Offset warm = new Offset(Frost.LAST, year.daysToWarmth());
    return new PlantingRules.Rule(
        new PlantingTime(rule.time().how(), warm, rule.time().until()), rule.source());
  }

  /** By how many days what is planted on the first day ripens after the frost; 0 if before it. */
  int shortBy(PlantingRules.Rule rule) {
    return rule.time().shortBy(year.begins().value(), year.ends().value());
  }

  private Derived<MonthDay> day(Offset offset, Source source) {
    boolean last = offset.frost() == Frost.LAST;
    String named = last ? year.beginning() : year.ending();
    Derived<MonthDay> from = last ? year.begins() : year.ends();
    return Derived.by(named + " + days from then", source)
        .from(named, from)
        .from("days from then", offset.days())
        .gives(offset.day(year.begins().value(), year.ends().value()));
  }
}
