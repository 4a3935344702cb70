package yardloom.planting.bloom;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.facts.FrostDates;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.suit.rule.Variety;
import yardloom.planting.traits.Bloom;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.year.BloomDelay;
import yardloom.planting.year.GrowingYear;

/**
 * The days on which each kind of the plan is in bloom, from the last frost of spring; varieties
 * that the plan calls early or late have rows of their own. Kinds that are picked before they bloom
 * have none. Without frost dates there is no table.
 */
public final class BloomTable implements TableMaker {
  /** Any year without a leap day: the table is of usual years. */
  private static final int YEAR = 2025;

  /** What blooms earlier before the last frost blooms in winter: common practice. */
  private static final int WINTER_DAYS = 40;

  @Override
  public String id() {
    return "bloom";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE, YardFacts.STANDS, TurnPlan.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public List<Chart> charts() {
    return List.of(Chart.of("bloom", "In bloom", Chart.Kind.SPANS, "from", "until"));
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "In bloom")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"));
    Optional<FrostDates> frost = facts.find(YardFacts.FROST);
    if (frost.isEmpty()) {
      return table.build();
    }
    Derived<MonthDay> last = frost.get().lastOfSpring();
    Map<String, Bloom> kinds = kinds(plan, facts, last.value());
    if (kinds.isEmpty()) {
      return table.build();
    }
    Set<String> sources = new TreeSet<>();
    kinds.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<String, Bloom> e) -> e.getValue().from())
                .thenComparing(Map.Entry::getKey))
        .forEach(
            e -> {
              Bloom bloom = e.getValue();
              table.row(
                  Cell.text(e.getKey()),
                  Cell.of(day(last.value(), bloom.from())),
                  Cell.of(day(last.value(), bloom.until())));
              sources.add(bloom.source().cite());
            });
    return table
        .note(
            "Days are counted from the usual last frost, "
                + TableFormat.day(last.value())
                + " ("
                + last.source().cite()
                + "); a warm or cold spring moves them by a week or two. Sources: "
                + String.join("; ", sources)
                + ".")
        .build();
  }

  private static MonthDay day(MonthDay lastFrost, int days) {
    return MonthDay.from(lastFrost.atYear(YEAR).plusDays(days));
  }

  private static Map<String, Bloom> kinds(Plan plan, Facts facts, MonthDay lastFrost) {
    Map<String, Bloom> kinds = new TreeMap<>();
    int delay = BloomDelay.days(lastFrost, facts.find(YardFacts.CLIMATE));
    Optional<GrowingYear> year = GrowingYear.of(facts);
    PlantCatalogue catalogue = PlantCatalogue.of(plan);
    for (Stand stand : facts.all(YardFacts.STANDS)) {
      Optional<Turn> turn = facts.get(TurnPlan.KEY).of(stand.in(), stand.place(), stand.plant());
      if (turn.isPresent()) {
        inTurn(turn.get(), lastFrost).ifPresent(b -> kinds.put(turn.get().planting().title(), b));
        continue;
      }
      Plant plant = catalogue.plant(stand.plant());
      Optional<Bloom> bloom = Bloom.of(plant);
      if (bloom.isPresent()) {
        Variety.Blooms when = when(plan, stand);
        String name =
            when == Variety.Blooms.MIDSEASON
                ? stand.plant()
                : stand.plant() + ", " + (when == Variety.Blooms.EARLY ? "early" : "late");
        int days = waits(plant, bloom.get()) ? delay : year.map(y -> y.waits(plant)).orElse(0);
        kinds.put(name, bloom.get().later(when.days() + days));
      }
    }
    return kinds;
  }

  /** As much later as it is planted, and no longer than it stands; empty if it goes before. */
  private static Optional<Bloom> inTurn(Turn turn, MonthDay lastFrost) {
    Optional<Bloom> usual = Bloom.of(turn.planting().plant()).map(b -> b.later(turn.laterDays()));
    if (usual.isEmpty() || !turn.inTime()) {
      return Optional.empty();
    }
    LocalDate planted = MonthDay.from(turn.planted()).atYear(YEAR);
    LocalDate over = planted.plusDays(turn.stands());
    int last = (int) (over.toEpochDay() - lastFrost.atYear(YEAR).toEpochDay()) - 1;
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

  private static Variety.Blooms when(Plan plan, Stand stand) {
    return plan.element(stand.in())
        .flatMap(in -> Variety.of(in, stand.plant()))
        .map(Variety::blooms)
        .orElse(Variety.Blooms.MIDSEASON);
  }
}
