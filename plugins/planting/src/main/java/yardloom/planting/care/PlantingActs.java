package yardloom.planting.care;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.care.Lots.Lot;
import yardloom.planting.care.formula.Season;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;
import yardloom.planting.turn.Turn;

/**
 * The acts that follow from days of planting: planting itself, water until roots have grown, sowing
 * again in later seasons, thinning what was planted densely.
 */
final class PlantingActs {
  private static final Source SOWN_IN =
      Source.commonPractice("plants are watered in and stems kept free of mulch");
  private static final Source THINNED = Source.plan("thinning as the plan says");
  private static final Source TURN =
      Source.commonPractice("a thin layer of compost before a second crop");

  /** Compost before a second crop. */
  private static final Length BETWEEN = Length.inches(0.5);

  private static final int DAILY = 14;
  private static final int SECOND = 30;
  private static final int ROOTED = 45;

  private final Facts in;
  private final Lots lots;
  private final LocalDate start;
  private final UnitSystem units;
  private final int firstYear;
  private final IntFunction<Season> seasonOf;
  private final List<CareAct> acts = new ArrayList<>();

  PlantingActs(
      Facts in,
      Lots lots,
      LocalDate start,
      int firstYear,
      IntFunction<Season> seasonOf,
      UnitSystem units) {
    this.units = units;
    this.in = in;
    this.lots = lots;
    this.start = start;
    this.firstYear = firstYear;
    this.seasonOf = seasonOf;
  }

  List<CareAct> acts() {
    planting();
    changeOver();
    thinOut();
    return List.copyOf(acts);
  }

  private void planting() {
    Map<LocalDate, TreeSet<String>> visits = new TreeMap<>();
    for (Lot lot : lots.all()) {
      lot.planted()
          .ifPresent(d -> visits.computeIfAbsent(d, k -> new TreeSet<>()).add(lot.plant().name()));
    }
    for (Map.Entry<LocalDate, TreeSet<String>> e : visits.entrySet()) {
      List<String> kinds = List.copyOf(e.getValue());
      LocalDate day = e.getKey();
      List<String> set =
          lots.all().stream()
              .filter(l -> l.turn().isEmpty() && l.planted().filter(day::equals).isPresent())
              .map(l -> l.plant().name())
              .toList();
      if (!set.isEmpty()) {
        // What follows another has its own act each season.
        give(
            "plant-" + day,
            Act.PLANT,
            "Plant",
            set,
            day,
            day,
            "Water in at once; mulch a hand's width off every stem.",
            SOWN_IN);
      }
      // How much stands in the table of water for new plants, on the same days.
      give(
          "water-" + day,
          Act.WATER,
          "Water new plants",
          kinds,
          day,
          day.plusDays(ROOTED - 1L),
          "Daily until "
              + TableFormat.day(MonthDay.from(day.plusDays(DAILY - 1L)))
              + ", every second day until "
              + TableFormat.day(MonthDay.from(day.plusDays(SECOND - 1L)))
              + ", then every third, unless it rained: feel the root ball a finger deep. What rests"
              + " without leaves waits until they come.",
          CareRow.sources().source("AUG"));
    }
  }

  private void give(
      String key,
      Act act,
      String what,
      List<String> kinds,
      LocalDate from,
      LocalDate until,
      String how,
      Source source) {
    acts.add(
        new CareAct(
            key,
            new CareTask(act, what, how, source),
            kinds,
            new CareAct.When(1, from, until, 0),
            Optional.empty()));
  }

  /**
   * What follows another, each season: the one before is cut, compost spread, the next planted. Its
   * first planting has an act of its own.
   */
  private void changeOver() {
    for (Lot lot : lots.all()) {
      if (lot.turn().isEmpty()) {
        continue;
      }
      Turn turn = lot.turn().get().turn();
      String cleared = lot.turn().get().before();
      String kind = lot.plant().name();
      for (int n = 1; n <= CareAct.GROWN; n++) {
        int years = n - 1;
        LocalDate from = lot.planted().get().plusYears(years);
        acts.add(
            new CareAct(
                lot.turn().get().key(),
                new CareTask(
                    Act.SOW,
                    "Clear, feed and plant the next",
                    "Cut "
                        + cleared
                        + " at the ground, its roots stay; spread "
                        + Say.depth(BETWEEN, units)
                        + " of compost ("
                        + Say.volume(lot.turn().get().ground().deep(BETWEEN), units)
                        + ") and plant "
                        + kind
                        + " on its ground. The household does it: the crew's visits end with what stands"
                        + " first.",
                    TURN),
                List.of(kind),
                new CareAct.When(
                    n,
                    from,
                    from.plusDays(turn.latest().toEpochDay() - turn.planted().toEpochDay()),
                    1),
                Optional.empty()));
      }
    }
  }

  /** Dense plantings, late in the winter before the season in which the plan thins them. */
  private void thinOut() {
    for (Planting p : in.get(PlantPlaces.KEY).plantings()) {
      Optional<Thinned> thinned = Thinning.of(p);
      if (thinned.isPresent() && !p.at().isEmpty()) {
        int stay = Thinning.kept(p, thinned.get()).size();
        Season season = seasonOf.apply(firstYear + thinned.get().season() - 1);
        acts.add(
            new CareAct(
                CareYears.slug("thin out " + p.bed().id().name() + " " + p.plant().name()),
                new CareTask(
                    Act.THIN,
                    "Thin out " + p.bed().id().name(),
                    (p.at().size() - stay)
                        + " of "
                        + p.at().size()
                        + " go, "
                        + stay
                        + " stay: lift and give away, or cut at the ground.",
                    THINNED),
                List.of(p.plant().name()),
                new CareAct.When(
                    Math.min(thinned.get().season(), CareAct.GROWN),
                    season.day(-60),
                    season.day(-21),
                    0),
                Optional.empty()));
      }
    }
  }
}
