package yardloom.planting.bloom;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.suit.rule.Variety;
import yardloom.planting.traits.Bloom;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.year.BloomDelay;
import yardloom.planting.year.GrowingYear;

/**
 * When each kind of a plan blooms, in days of any year; varieties that the plan calls early or late
 * are apart.
 */
final class BloomYear {
  /** Any year without a leap day: the days are those of usual years. */
  private static final int YEAR = 2025;

  /** What blooms earlier before the last frost blooms in winter: common practice. */
  private static final int WINTER_DAYS = 40;

  private final Plan plan;
  private final Facts facts;
  private final GrowingYear year;
  private final Map<String, Kind> kinds = new TreeMap<>();

  private BloomYear(Plan plan, Facts facts, GrowingYear year) {
    this.plan = plan;
    this.facts = facts;
    this.year = year;
  }

  /**
   * @param title its kind, and whether its variety is early or late
   */
  record Kind(String plant, String title, Bloom bloom, LocalDate from, LocalDate until) {}

  /** By first day; none without a year to count from. */
  static List<Kind> of(Plan plan, Facts facts) {
    Optional<GrowingYear> year = GrowingYear.of(facts);
    return year.isEmpty() ? List.of() : new BloomYear(plan, facts, year.get()).kinds();
  }

  private List<Kind> kinds() {
    MonthDay begins = year.begins().value();
    int delay = BloomDelay.days(begins, facts.find(YardFacts.CLIMATE));
    PlantCatalogue catalogue = PlantCatalogue.of(plan);
    for (Stand stand : facts.all(YardFacts.STANDS)) {
      Optional<Turn> turn = facts.get(TurnPlan.KEY).of(stand.in(), stand.place(), stand.plant());
      if (turn.isPresent()) {
        inTurn(turn.get(), begins).ifPresent(b -> add(stand, turn.get().planting().title(), b));
        continue;
      }
      Plant plant = catalogue.plant(stand.plant());
      Optional<Bloom> bloom = Bloom.of(plant);
      if (bloom.isPresent()) {
        Variety.Blooms when = when(stand);
        String title =
            when == Variety.Blooms.MIDSEASON
                ? stand.plant()
                : stand.plant() + ", " + (when == Variety.Blooms.EARLY ? "early" : "late");
        int days = waits(plant, bloom.get()) ? delay : year.waits(plant);
        add(stand, title, bloom.get().later(when.days() + days));
      }
    }
    List<Kind> found = new ArrayList<>(kinds.values());
    found.sort(Comparator.comparing((Kind k) -> k.bloom().from()).thenComparing(Kind::title));
    return found;
  }

  private void add(Stand stand, String title, Bloom bloom) {
    LocalDate begins = year.begins().value().atYear(YEAR);
    kinds.put(
        title,
        new Kind(
            stand.plant(),
            title,
            bloom,
            begins.plusDays(bloom.from()),
            begins.plusDays(bloom.until())));
  }

  /** As much later as it is planted, and no longer than it stands; empty if it goes before. */
  private Optional<Bloom> inTurn(Turn turn, MonthDay begins) {
    Plant plant = turn.planting().plant();
    Optional<Bloom> usual = Bloom.of(plant).map(b -> b.later(year.waits(plant) + turn.laterDays()));
    if (usual.isEmpty() || !turn.inTime()) {
      return Optional.empty();
    }
    LocalDate planted = MonthDay.from(turn.planted()).atYear(YEAR);
    LocalDate over = planted.plusDays(turn.stands());
    int last = (int) (over.toEpochDay() - begins.atYear(YEAR).toEpochDay()) - 1;
    Bloom bloom = usual.get();
    return bloom.from() > last
        ? Optional.empty()
        : Optional.of(new Bloom(bloom.from(), Math.min(bloom.until(), last), bloom.source()));
  }

  /**
   * What blooms in winter, or is sown anew each year, does not wait for the warm days of spring.
   */
  private static boolean waits(Plant plant, Bloom bloom) {
    return !plant.growth().season().isAnnual() && bloom.from() > -WINTER_DAYS;
  }

  private Variety.Blooms when(Stand stand) {
    return plan.element(stand.in())
        .flatMap(in -> Variety.of(in, stand.plant()))
        .map(Variety::blooms)
        .orElse(Variety.Blooms.MIDSEASON);
  }
}
