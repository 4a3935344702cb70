package yardloom.planting.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.facts.ClimateNormals;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.care.Lots.Lot;
import yardloom.planting.care.formula.Season;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.traits.ColdLimits;
import yardloom.planting.year.BloomDelay;
import yardloom.planting.year.GrowingYear;

/**
 * Lays the acts of care out over the seasons of one yard: the rows of the data, each as it is due.
 */
final class CareYears {
  private final Facts in;
  private final GrowingYear growing;
  private final UnitSystem units;
  private final Lots lots;
  private final CarePace pace;
  private final LocalDate start;
  private final int firstYear;
  private final boolean frozen;
  private final int bloomDelay;
  private final List<CareAct> acts = new ArrayList<>();

  CareYears(Plan plan, Facts in, GrowingYear growing, LocalDate start, Lots lots) {
    this.in = in;
    this.growing = growing;
    this.lots = lots;
    pace = new CarePace(plan, in, lots);
    this.start = start;
    units = plan.info().units();
    firstYear = firstSeason(start);
    bloomDelay = BloomDelay.days(growing.begins().value(), in.find(YardFacts.CLIMATE));
    frozen = in.find(YardFacts.CLIMATE).map(ClimateNormals::hasFrozenWinters).orElse(true);
  }

  private int firstSeason(LocalDate planted) {
    return Season.firstOf(planted, growing.begins().value(), growing.ends().value()).year();
  }

  private Season season(int year) {
    return Season.of(year, growing.begins().value(), growing.ends().value());
  }

  List<CareAct> acts() {
    acts.addAll(new PlantingActs(in, lots, start, firstYear, this::season, units).acts());
    acts.addAll(new PickActs(in, lots, firstYear, this::season, this::firstSeason).acts());
    for (CareRow row : CareRow.SHIPPED) {
      if (row.where() == CareRow.Where.ALWAYS
          || row.where() != CareRow.Where.FROZEN && growing.hasFrost()
          || row.where() == CareRow.Where.FROZEN && frozen) {
        row(row);
      }
    }
    return acts.stream().sorted().toList();
  }

  /** One row of the data in every season in which it is due. */
  private void row(CareRow row) {
    for (int n = 1; n < CareAct.GROWN; n++) {
      due(row, n, firstYear + n - 1);
    }
    if (row.task().act() == Act.WINTER) {
      // What is planted in fall has a winter before its first season.
      due(row, 1, firstYear - 1);
    }
    if (row.when().last().isEmpty()) {
      int n = Math.max(CareAct.GROWN, row.when().first());
      due(row, CareAct.GROWN, firstYear + n - 1);
    }
  }

  private void due(CareRow row, int n, int year) {
    Season season = season(year);
    boolean grows =
        row.pace().per().isForPlants()
            && row.when().from().afterLast()
            && row.when().from().days() > 0;
    int late = grows ? bloomDelay : 0;
    Season ending = row.when().until().next() ? season(year + 1) : season;
    LocalDate from =
        season.day(row.when().from().afterLast(), row.when().from().days()).plusDays(late);
    LocalDate until =
        ending.day(row.when().until().afterLast(), row.when().until().days()).plusDays(late);
    if (row.pace().per().isForPlants()) {
      forPlants(row, n, year, from, until);
    } else if (pace.applies(row, n)
        && (n == CareAct.GROWN || row.when().isDue(Math.max(1, year - firstYear + 1)))
        && !until.isBefore(start)) {
      LocalDate begin = from.isBefore(start) ? start : from;
      add(row, n, year, begin, until, List.of(), pace.hours(row, n, begin, until));
    }
  }

  private void forPlants(CareRow row, int n, int year, LocalDate from, LocalDate until) {
    List<Lot> found = new ArrayList<>();
    LocalDate begin = until;
    int count = 0;
    int garden = Math.max(n, year - firstYear + 1);
    for (Lot lot : lots.all()) {
      int some = lot.count(row.who(), garden);
      int age = lot.planted().map(d -> lot.age(year, firstSeason(d))).orElse(lot.age(n, 0));
      boolean firstWinter = row.task().act() == Act.WINTER && age == 0;
      LocalDate planted = lot.planted().orElse(start);
      boolean due = n == CareAct.GROWN || row.when().isDue(firstWinter ? 1 : age);
      boolean harmed =
          switch (row.where()) {
            case FROST -> isHarmed(lot.plant());
            case YOUNG -> !isHarmed(lot.plant()) && isHarmedYoung(lot.plant());
            default -> true;
          };
      if (some > 0 && (age >= 1 || firstWinter) && due && harmed && !until.isBefore(planted)) {
        found.add(lot);
        count += some;
        LocalDate own = from.isBefore(planted) ? planted : from;
        begin = own.isBefore(begin) ? own : begin;
      }
    }
    if (!found.isEmpty()) {
      Derived<TimeSpan> hours = pace.hoursFor(row, count, begin, until);
      List<String> kinds = found.stream().map(l -> l.plant().name()).distinct().toList();
      add(row, n, year, begin, until, kinds, hours);
    }
  }

  /**
   * Whether a usual winter here is colder than a plant bears: its zone is warmer than the yard's,
   * or the same and the yard lies in the colder half of it. Where either is unknown, it is.
   */
  private boolean isHarmed(Plant plant) {
    Optional<Hardiness> here = in.find(YardFacts.HARDINESS);
    Optional<ColdLimits.Limit> limit = ColdLimits.of(plant);
    if (here.isEmpty() || limit.isEmpty()) {
      return true;
    }
    int warmer = limit.get().coldest() - here.get().zone();
    return warmer > 0 || warmer == 0 && !here.get().warmerHalf();
  }

  /** Whether it winters in the yard's own zone and in no colder one: young it bears less. */
  private boolean isHarmedYoung(Plant plant) {
    Optional<Hardiness> here = in.find(YardFacts.HARDINESS);
    return here.isPresent()
        && ColdLimits.of(plant).filter(l -> l.coldest() >= here.get().zone()).isPresent();
  }

  private void add(
      CareRow row,
      int n,
      int year,
      LocalDate from,
      LocalDate until,
      List<String> kinds,
      Derived<TimeSpan> hours) {
    String how = Say.inText(row.task().how(), units);
    if (row.task().act() == Act.MULCH) {
      how += topUps();
    }
    acts.add(
        new CareAct(
            slug(row.task().what()) + (isFirstWinter(row, n, year) ? CareAct.FIRST_WINTER : ""),
            new CareTask(row.task().act(), row.task().what(), how, row.task().source()),
            kinds,
            new CareAct.When(n, from, until, row.when().every()),
            Optional.of(hours)));
  }

  /** What is planted in fall has a winter before its first season, beside that at its end. */
  private boolean isFirstWinter(CareRow row, int n, int year) {
    return row.task().act() == Act.WINTER && n == 1 && year < firstYear;
  }

  /** What the take-off adds at the end of each season. */
  private String topUps() {
    List<String> adds = new ArrayList<>();
    for (int n = 1; n < CareAct.GROWN; n++) {
      String season = " in season " + n;
      pace.added(n).ifPresent(add -> adds.add(Say.volume(add.value(), units) + season));
    }
    return adds.isEmpty() ? "" : " About " + String.join(", ", adds) + " and after.";
  }

  static String slug(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }
}
