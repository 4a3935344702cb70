package yardloom.planting.own;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import yardloom.facts.LightNeed;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.OwnColumns;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Choices;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.catalogue.SizeRange;
import yardloom.planting.harvest.Bearing;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.harvest.PlantYields;
import yardloom.planting.harvest.Yield;
import yardloom.planting.traits.Bloom;
import yardloom.planting.traits.ChillNeeds;
import yardloom.planting.traits.ColdLimits;
import yardloom.planting.traits.Growth;
import yardloom.planting.traits.Hazard;
import yardloom.planting.traits.HeatLimits;
import yardloom.planting.traits.LeastLight;
import yardloom.planting.traits.Pollination;
import yardloom.planting.traits.SoilNeed;
import yardloom.planting.traits.WaterClass;

/**
 * One plant of a user's own, from a row of figures: what the row leaves out is taken from the plant
 * of the catalogue that it is like, and is then unverified, since nobody has said it of this plant.
 */
final class OwnPlant {
  /** The columns that a row must have. */
  static final List<String> NEEDED = List.of("plant", "like");

  /** All other columns; lengths, weights and temperatures may also stand in the metric unit. */
  static final List<String> COLUMNS =
      List.of(
          ("botanical family spacing_in spacing_cm rows_in rows_cm spread_in spread_cm height_in"
                  + " height_cm light least_light_h ph_low ph_high drainage water zone chill_h heat_f"
                  + " heat_c bloom_from bloom_until pick_from pick_until yield_low_lb yield_high_lb"
                  + " yield_low_kg yield_high_kg yield_per first_year full_year pollination"
                  + " partner_group within_ft within_m roles native harms caution window mulch layer"
                  + " life crop")
              .split(" "));

  private final DataRow row;
  private final Plant like;
  private final Source source;
  private final Map<Class<?>, Object> traits = new HashMap<>();

  private OwnPlant(DataRow row, Plant like, Source source) {
    this.row = row;
    this.like = like;
    this.source = source;
  }

  /**
   * @throws PlanException at its cell for what cannot be
   */
  static Plant read(DataRow row, Plant like, Source source) {
    return new OwnPlant(row, like, source).plant();
  }

  private Plant plant() {
    traits();
    return new Plant(
        name(),
        text("botanical").orElse(like.botanical()),
        new Plant.Family(
            text("family").orElse(like.family().name()), by("family", like.family().source())),
        growth(),
        new Plant.Size(
            size("spacing", like.size().inRow()),
            size("rows", like.size().rows()),
            size("spread", like.size().spread()),
            size("height", like.size().height())),
        light(),
        draw(),
        like.juglone(),
        new Plant.Caution(
            like.caution().harmful() || text("harms").isPresent(),
            text("caution").orElse(like.caution().text()),
            by("caution", like.caution().source())),
        text("mulch").map(this::borne).orElse(like.mulch()),
        Optional.of(new Plant.Own(like.model(), traits)));
  }

  private Plant.Growth growth() {
    return new Plant.Growth(
        like.growth().form(),
        like.growth().season(),
        like.growth().start(),
        text("window").map(this::window).orElse(like.growth().window()));
  }

  private Plant.Draw draw() {
    return text("crop")
        .map(c -> new Plant.Draw(at("crop", () -> PlantCatalogue.crop(c)), false, source))
        .orElseGet(() -> new Plant.Draw(like.draw().crop(), true, standIn(like.draw().source())));
  }

  private Plant.Light light() {
    return new Plant.Light(
        text("light")
            .map(l -> choice(LightNeed.Amount.class, "light", l))
            .orElse(like.light().amount()),
        by("light", like.light().source()));
  }

  private String name() {
    String name = row.text("plant");
    if (name.isEmpty()) {
      throw wrong("plant", "a plant needs a name");
    }
    return name;
  }

  private void traits() {
    Growth growth = Growth.of(like);
    traits.put(
        Growth.class,
        new Growth(
            text("layer").map(l -> choice(Growth.Layer.class, "layer", l)).orElse(growth.layer()),
            text("life").map(l -> choice(Growth.Life.class, "life", l)).orElse(growth.life()),
            by("layer", growth.source()),
            text("native").or(growth::nativeTo)));
    traits.put(Growth.Role.class, roles());
    put(
        LeastLight.class,
        within("least_light_h", 0, 16).map(h -> new LeastLight(h, source)),
        Optional.of(LeastLight.of(like)).map(l -> new LeastLight(l.hours(), standIn(l.source()))));
    soil();
    put(
        WaterClass.Said.class,
        text("water").map(w -> new WaterClass.Said(choice(WaterClass.class, "water", w), source)),
        WaterClass.of(like).map(w -> new WaterClass.Said(w.of(), standIn(w.source()))));
    climate();
    year();
    harvest();
    pollination();
    traits.put(Hazard.class, hazards());
  }

  private List<Hazard> hazards() {
    Optional<List<String>> said = text("harms").map(OwnPlant::list);
    if (said.isEmpty()) {
      return Hazard.of(like).stream()
          .map(h -> new Hazard(h.to(), h.part(), standIn(h.source())))
          .toList();
    }
    String part = text("caution").orElse("see its caution");
    return said.get().stream()
        .map(to -> new Hazard(choice(Hazard.Whom.class, "harms", to), part, source))
        .toList();
  }

  private List<String> roles() {
    return text("roles").map(OwnPlant::list).orElseGet(() -> Growth.roles(like));
  }

  private static List<String> list(String text) {
    return Arrays.stream(text.split("[,;]")).map(String::strip).filter(t -> !t.isEmpty()).toList();
  }

  private void soil() {
    Optional<SoilNeed> from = SoilNeed.of(like);
    Optional<Double> low = within("ph_low", 3, 10);
    Optional<Double> high = within("ph_high", 3, 10);
    if (low.isPresent() != high.isPresent() || low.isPresent() && low.get() > high.get()) {
      throw wrong("ph_low", "pH goes from `ph_low` to `ph_high`; give both, the lower first");
    }
    if (from.isEmpty() && (low.isEmpty() || text("drainage").isEmpty())) {
      return;
    }
    traits.put(
        SoilNeed.class,
        new SoilNeed(
            low.orElseGet(() -> from.get().lowPh()),
            high.orElseGet(() -> from.get().highPh()),
            low.isPresent() ? source : standIn(from.get().phSource()),
            text("drainage")
                .map(d -> choice(SoilNeed.Drainage.class, "drainage", d))
                .orElseGet(() -> from.get().drainage()),
            text("drainage").isPresent() ? source : standIn(from.get().drainageSource())));
  }

  private void climate() {
    put(
        ColdLimits.Limit.class,
        within("zone", 1, 13).map(z -> new ColdLimits.Limit(z.intValue(), source)),
        ColdLimits.of(like).map(l -> new ColdLimits.Limit(l.coldest(), standIn(l.source()))));
    put(
        ChillNeeds.Need.class,
        within("chill_h", 0, 2500).map(h -> new ChillNeeds.Need(h, OptionalDouble.empty(), source)),
        ChillNeeds.of(like).map(n -> new ChillNeeds.Need(n.low(), n.high(), standIn(n.source()))));
    put(
        HeatLimits.Limit.class,
        within("heat_f", 60, 130)
            .map(Temperature::fahrenheit)
            .or(() -> within("heat_c", 15, 55).map(Temperature::celsius))
            .map(t -> new HeatLimits.Limit(t, source)),
        HeatLimits.of(like).map(l -> new HeatLimits.Limit(l.day(), standIn(l.source()))));
  }

  /** Days from the last frost of spring. */
  private void year() {
    put(
        Bloom.class,
        days("bloom").map(d -> new Bloom(d[0], d[1], source)),
        Bloom.of(like).map(b -> new Bloom(b.from(), b.until(), standIn(b.source()))));
    put(
        HarvestSeason.class,
        days("pick").map(d -> HarvestSeason.here(d[0], d[1], source)),
        HarvestSeason.of(like).map(s -> s.by(standIn(s.source()))));
  }

  private Optional<int[]> days(String what) {
    Optional<Double> from = within(what + "_from", -200, 500);
    Optional<Double> until = within(what + "_until", -200, 700);
    if (from.isEmpty() && until.isEmpty()) {
      return Optional.empty();
    }
    if (from.isEmpty()
        || until.isEmpty()
        || until.get() < from.get()
        || until.get() - from.get() >= 365) {
      throw wrong(
          what + "_from",
          "days go from `"
              + what
              + "_from` to `"
              + what
              + "_until`, counted from the last frost of spring, less than a year apart");
    }
    return Optional.of(new int[] {from.get().intValue(), until.get().intValue()});
  }

  private void harvest() {
    Optional<Mass> low = mass("yield_low");
    Optional<Mass> high = mass("yield_high");
    if (high.isPresent() || low.isPresent()) {
      Mass most = high.orElseThrow(() -> wrong("yield_low_lb", "give also the highest yield"));
      Yield.Per per = choice(Yield.Per.class, "yield_per", text("yield_per").orElse("plant"));
      Mass least = low.orElse(Mass.kilograms(0));
      if (least.compareTo(most) > 0) {
        throw wrong("yield_high_lb", "a yield goes from low to high");
      }
      traits.put(Yield.class, new Yield(least, most, per, List.of(source)));
    } else {
      PlantYields.of(like)
          .ifPresent(
              y ->
                  traits.put(
                      Yield.class,
                      new Yield(
                          y.low(),
                          y.high(),
                          y.per(),
                          y.sources().stream().map(this::standIn).toList())));
    }
    Optional<Double> first = within("first_year", 1, 40);
    Optional<Double> full = within("full_year", 1, 60);
    if (full.isPresent() && first.isEmpty()) {
      throw wrong("full_year", "give also the year of the first harvest");
    }
    if (first.isPresent() && full.orElse(first.get()) < first.get()) {
      throw wrong("full_year", "the year of full harvest is not before the first");
    }
    put(
        Bearing.class,
        first.map(f -> new Bearing(f.intValue(), full.orElse(f).intValue(), source)),
        Bearing.of(like).map(b -> new Bearing(b.first(), b.full(), standIn(b.source()))));
    put(
        PlantYields.First.class,
        first.map(f -> new PlantYields.First("year " + f.intValue(), source)),
        PlantYields.first(like).map(f -> new PlantYields.First(f.when(), standIn(f.source()))));
  }

  private void pollination() {
    Pollination from = Pollination.of(like);
    Optional<Length> near =
        within("within_ft", 1, 1000)
            .map(Length::feet)
            .or(() -> within("within_m", 0.3, 300).map(Length::metres));
    boolean said = text("pollination").isPresent();
    traits.put(
        Pollination.class,
        new Pollination(
            text("pollination")
                .map(n -> choice(Pollination.Need.class, "pollination", n))
                .orElse(from.need()),
            text("partner_group").orElse(from.group()),
            near.or(from::within),
            said ? source : standIn(from.source())));
  }

  private Plant.Borne borne(String group) {
    return at("mulch", () -> PlantCatalogue.borne(group));
  }

  private String window(String group) {
    return at("window", () -> PlantCatalogue.windowGroup(group));
  }

  private <T> void put(Class<T> type, Optional<T> said, Optional<T> standIn) {
    said.or(() -> standIn).ifPresent(t -> traits.put(type, t));
  }

  private SizeRange size(String what, SizeRange standIn) {
    Optional<Length> said =
        number(what + "_in", Length::inches)
            .or(() -> number(what + "_cm", cm -> Length.metres(cm / 100)));
    if (said.isEmpty()) {
      return new SizeRange(standIn.low(), standIn.high(), standIn(standIn.source()));
    }
    if (said.get().inches() < 1 || said.get().feet() > 150) {
      throw wrong(what + "_in", what + " is from 1 in (2.5 cm) to 150 ft (46 m)");
    }
    return new SizeRange(said.get(), said.get(), source);
  }

  private Optional<Mass> mass(String what) {
    return number(what + "_lb", Mass::pounds).or(() -> number(what + "_kg", Mass::kilograms));
  }

  private <T> Optional<T> number(String column, DoubleFunction<T> unit) {
    return OwnColumns.number(row, column).map(unit::apply);
  }

  private Optional<Double> within(String column, double low, double high) {
    Optional<Double> value = number(column, v -> v);
    if (value.isPresent() && !(value.get() >= low && value.get() <= high)) {
      throw wrong(
          column, "`" + column + "` is from " + low + " to " + high + ", got " + value.get());
    }
    return value;
  }

  private Optional<String> text(String column) {
    return OwnColumns.text(row, column);
  }

  private <E extends Enum<E>> E choice(Class<E> type, String column, String text) {
    return at(column, () -> Choices.parse(type, text));
  }

  private <T> T at(String column, Supplier<T> read) {
    try {
      return read.get();
    } catch (PlanException e) {
      throw e.at(row.placeOf(column));
    }
  }

  private Source by(String column, Source otherwise) {
    return text(column).isPresent() ? source : standIn(otherwise);
  }

  private Source standIn(Source of) {
    return Source.memory(
        "as " + like.name() + ", which stands in: " + of.title(),
        of.publisher().isBlank() ? "common practice" : of.publisher(),
        of.year(),
        of.locator());
  }

  private PlanException wrong(String column, String what) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, row.placeOf(column), what);
  }
}
