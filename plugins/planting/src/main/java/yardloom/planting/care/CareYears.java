package yardloom.planting.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.facts.ClimateNormals;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.care.CareRow.From;
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
  private final LotPicking picking;
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
    picking = new LotPicking(in, growing, lots);
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
    acts.addAll(new SowingActs(in, lots, picking, start, firstYear, this::season).acts());
    acts.addAll(new PickActs(in, lots, picking, firstYear, this::season, this::firstSeason).acts());
    for (CareRow row : CareRow.SHIPPED) {
      boolean isDone =
          switch (row.where()) {
            case ALWAYS -> true;
            case FROST, YOUNG -> growing.hasFrost();
            case FROZEN -> frozen;
            case OPEN -> !frozen;
          };
      if (isDone) {
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
    if (isOverWinter(row)) {
      due(row, 1, firstYear - 1);
    }
    if (row.when().last().isEmpty()) {
      int n = Math.max(CareAct.GROWN, row.when().first());
      due(row, CareAct.GROWN, firstYear + n - 1);
    }
  }

  /** What is planted in fall has such an act before its first season, beside that at its end. */
  private static boolean isOverWinter(CareRow row) {
    return row.task().act() == Act.WINTER || row.when().until().next();
  }

  private void due(CareRow row, int n, int year) {
    if (row.pace().per().isForPlants()) {
      forPlants(row, n, year);
      return;
    }
    Span days = span(row, year, Optional.empty());
    if (pace.applies(row, n)
        && (n == CareAct.GROWN || row.when().isDue(Math.max(1, year - firstYear + 1)))
        && !days.until().isBefore(start)) {
      LocalDate begin = days.from().isBefore(start) ? start : days.from();
      Span own = new Span(begin, days.until());
      add(row, n, year, own, List.of(), pace.hours(row, n, begin, days.until()), "");
    }
  }

  /** First and last day of an act. */
  private record Span(LocalDate from, LocalDate until) implements Comparable<Span> {
    @Override
    public int compareTo(Span other) {
      return Comparator.comparing(Span::from).thenComparing(Span::until).compare(this, other);
    }
  }

  private Span span(CareRow row, int year, Optional<Lot> lot) {
    CareRow.Offset first = row.when().from();
    boolean grows = row.pace().per().isForPlants() && first.from() == From.LAST && first.days() > 0;
    int late = grows ? lot.map(l -> late(l.plant())).orElse(bloomDelay) : 0;
    return new Span(
        day(first, year, lot).plusDays(late), day(row.when().until(), year, lot).plusDays(late));
  }

  /** Annuals wait for warm ground if at all, others for their bloom. */
  private int late(Plant plant) {
    return GrowingYear.isTender(plant) ? growing.waits(plant) : bloomDelay;
  }

  private LocalDate day(CareRow.Offset offset, int year, Optional<Lot> lot) {
    Season season = season(offset.next() ? year + 1 : year);
    LocalDate day =
        switch (offset.from()) {
          case LAST -> season.lastFrost();
          case FIRST -> season.firstFrost();
          case PICKED -> picked(season, lot);
          case FIRST_OR_PICKED -> {
            LocalDate picked = picked(season, lot);
            yield picked.isAfter(season.firstFrost()) ? picked : season.firstFrost();
          }
        };
    return day.plusDays(offset.days());
  }

  /** The last day of picking; the last frost for what is not picked. */
  private LocalDate picked(Season season, Optional<Lot> lot) {
    return lot.flatMap(picking::of).map(p -> season.day(p.until())).orElse(season.lastFrost());
  }

  /** One act for all plants of the same days: what waits for the harvest has those of its kind. */
  private void forPlants(CareRow row, int n, int year) {
    Map<Span, List<Lot>> byDays = new TreeMap<>();
    for (Lot lot : lots.all()) {
      if (!isDue(row, n, year, lot)) {
        continue;
      }
      Span days = span(row, year, Optional.of(lot));
      if (!days.until().isBefore(lot.planted().orElse(start))) {
        byDays.computeIfAbsent(days, d -> new ArrayList<>()).add(lot);
      }
    }
    byDays.forEach((days, found) -> forPlants(row, n, year, days, found));
  }

  private void forPlants(CareRow row, int n, int year, Span days, List<Lot> found) {
    int garden = Math.max(n, year - firstYear + 1);
    LocalDate begin = days.until();
    int count = 0;
    for (Lot lot : found) {
      LocalDate planted = lot.planted().orElse(start);
      LocalDate own = days.from().isBefore(planted) ? planted : days.from();
      begin = own.isBefore(begin) ? own : begin;
      count += lot.count(row.who(), garden);
    }
    Lot first = found.get(0);
    boolean isOfAll = days.equals(span(row, year, Optional.empty()));
    String suffix = isOfAll ? "" : "-" + slug(first.plant().name()) + first.suffix();
    List<String> kinds = found.stream().map(l -> l.plant().name()).distinct().toList();
    Derived<TimeSpan> hours = pace.hoursFor(row, count, begin, days.until());
    add(row, n, year, new Span(begin, days.until()), kinds, hours, suffix);
  }

  /** Whether any of a lot get an act in a season: they are of its group and its age. */
  private boolean isDue(CareRow row, int n, int year, Lot lot) {
    int some = lot.count(row.who(), Math.max(n, year - firstYear + 1));
    int age = lot.planted().map(d -> lot.age(year, firstSeason(d))).orElse(lot.age(n, 0));
    boolean firstWinter = row.task().act() == Act.WINTER && age == 0;
    boolean due = n == CareAct.GROWN || row.when().isDue(firstWinter ? 1 : age);
    boolean harmed =
        switch (row.where()) {
          case FROST -> isHarmed(lot.plant());
          case YOUNG -> !isHarmed(lot.plant()) && isHarmedYoung(lot.plant());
          default -> true;
        };
    return some > 0 && (age >= 1 || firstWinter) && due && harmed;
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
      Span days,
      List<String> kinds,
      Derived<TimeSpan> hours,
      String suffix) {
    String how = Say.inText(row.task().how(), units);
    if (row.task().act() == Act.MULCH) {
      how += topUps();
    }
    acts.add(
        new CareAct(
            slug(row.task().what()) + suffix + (year < firstYear ? CareAct.FIRST_WINTER : ""),
            new CareTask(row.task().act(), row.task().what(), how, row.task().source()),
            kinds,
            new CareAct.When(n, days.from(), days.until(), row.when().every()),
            Optional.of(hours)));
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
