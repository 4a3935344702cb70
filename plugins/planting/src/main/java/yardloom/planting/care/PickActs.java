package yardloom.planting.care;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.unit.Months;
import yardloom.planting.care.Lots.Lot;
import yardloom.planting.care.formula.Season;
import yardloom.planting.harvest.Bearing;
import yardloom.planting.harvest.HarvestSeason;

/**
 * Picking, kind by kind, in the days by which the table of the harvest shares out its months, from
 * the year on in which the kind first bears.
 */
final class PickActs {
  private final Facts in;
  private final Lots lots;
  private final LotPicking picking;
  private final int firstYear;
  private final IntFunction<Season> seasonOf;
  private final ToIntFunction<LocalDate> firstSeason;

  /**
   * @param firstSeason the year of the first season of what is planted on a day
   */
  PickActs(
      Facts in,
      Lots lots,
      LotPicking picking,
      int firstYear,
      IntFunction<Season> seasonOf,
      ToIntFunction<LocalDate> firstSeason) {
    this.in = in;
    this.lots = lots;
    this.picking = picking;
    this.firstYear = firstYear;
    this.seasonOf = seasonOf;
    this.firstSeason = firstSeason;
  }

  List<CareAct> acts() {
    List<CareAct> acts = new ArrayList<>();
    for (Lot lot : lots.all()) {
      Optional<HarvestSeason> days = picking.of(lot);
      Optional<Bearing> bearing = Bearing.of(lot.plant());
      if (days.isEmpty() || bearing.isEmpty()) {
        continue;
      }
      for (int n = 1; n <= CareAct.GROWN; n++) {
        if (n == CareAct.GROWN || age(lot, n) >= bearing.get().first()) {
          pick(lot, n, days.get(), bearing.get()).ifPresent(acts::add);
        }
      }
    }
    return acts;
  }

  private int age(Lot lot, int season) {
    int first = lot.planted().map(firstSeason::applyAsInt).orElse(firstYear);
    return lot.age(firstYear + season - 1, first);
  }

  private Optional<CareAct> pick(Lot lot, int n, HarvestSeason days, Bearing bearing) {
    int wait = n < CareAct.GROWN ? 0 : Math.max(0, bearing.first() - age(lot, n));
    Season season = seasonOf.apply(firstYear + n - 1 + wait);
    LocalDate from = season.day(days.from());
    LocalDate planted = lot.planted().orElse(from);
    LocalDate begins = from.isBefore(planted) ? planted : from;
    LocalDate until =
        days.isAllYear() ? begins.plusDays(days.days() - 1) : season.day(days.until());
    if (until.isBefore(planted)) {
      return Optional.empty();
    }
    String kind = lot.plant().name();
    Set<Month> rests = HarvestSeason.rests(lot.plant(), in.find(YardFacts.CLIMATE));
    String rest = rests.stream().map(Months::fullName).collect(Collectors.joining(", "));
    return Optional.of(
        new CareAct(
            "pick-" + CareYears.slug(kind) + lot.suffix(),
            new CareTask(
                Act.PICK,
                "Pick",
                "As it ripens; how much in which month stands in the harvest by month."
                    + (rest.isEmpty() ? "" : " It rests in " + rest + ": too hot."),
                days.source()),
            List.of(kind),
            new CareAct.When(n, begins, until, 1),
            Optional.empty()));
  }
}
