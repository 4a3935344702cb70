package yardloom.planting.care;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;
import yardloom.planting.care.Lots.Lot;
import yardloom.planting.care.formula.Season;

/**
 * Annuals in the seasons after the first, and second sowings, in the days that tables have. A
 * second sowing is one more crop than the plan places: it is said when it is picked, and not
 * counted.
 */
final class SowingActs {
  private static final Source SOWN = Source.commonPractice("annuals are sown again each season");
  private static final String ROTATED = "Where another family grew last season; see When to plant.";

  private final Facts in;
  private final Lots lots;
  private final LotPicking picking;
  private final LocalDate start;
  private final int firstYear;
  private final IntFunction<Season> seasonOf;

  SowingActs(
      Facts in,
      Lots lots,
      LotPicking picking,
      LocalDate start,
      int firstYear,
      IntFunction<Season> seasonOf) {
    this.in = in;
    this.lots = lots;
    this.picking = picking;
    this.start = start;
    this.firstYear = firstYear;
    this.seasonOf = seasonOf;
  }

  /**
   * Kinds that are sown in the same days.
   *
   * @param first by kind, the lot and the first day on which it may be sown in a year
   */
  private record Sowing(String key, PlantingWindow.Period period, TreeMap<String, First> first) {
    boolean isSecond() {
      return period.how().startsWith("second");
    }
  }

  private record First(Lot lot, MonthDay sown) {}

  List<CareAct> acts() {
    List<CareAct> acts = new ArrayList<>();
    for (Sowing s : sowings()) {
      for (int n = s.isSecond() ? 1 : 2; n <= CareAct.GROWN; n++) {
        Season season = seasonOf.apply(firstYear + n - 1);
        LocalDate from = season.on(s.period().from().value());
        LocalDate until = season.on(s.period().until().value());
        if (from.isAfter(start) && !until.isBefore(from)) {
          String how = s.period().how();
          String what = how.substring(0, 1).toUpperCase(Locale.ROOT) + how.substring(1);
          acts.add(
              new CareAct(
                  CareYears.slug(s.key()),
                  new CareTask(Act.SOW, what, s.isSecond() ? after(s, season) : ROTATED, SOWN),
                  List.copyOf(s.first().keySet()),
                  new CareAct.When(n, from, until, 1),
                  Optional.empty()));
        }
      }
    }
    return acts;
  }

  private List<Sowing> sowings() {
    Map<String, Sowing> sowings = new TreeMap<>();
    for (PlantingWindow w : in.all(YardFacts.PLANTING_WINDOWS)) {
      Optional<Lot> lot =
          lots.all().stream().filter(l -> l.plant().name().equals(w.plant())).findFirst();
      if (lot.isEmpty() || !lot.get().plant().growth().season().isAnnual()) {
        continue;
      }
      First first = new First(lot.get(), w.periods().get(0).from().value());
      for (PlantingWindow.Period p : w.periods()) {
        String key =
            CareYears.slug(p.how() + " " + lot.get().plant().growth().window())
                + "-"
                + p.until().value();
        sowings
            .computeIfAbsent(key, k -> new Sowing(k, p, new TreeMap<>()))
            .first()
            .put(w.plant(), first);
      }
    }
    return List.copyOf(sowings.values());
  }

  /** When a second sowing is picked: as long after its first day as the first sowing after its. */
  private String after(Sowing second, Season season) {
    LocalDate again = season.on(second.period().from().value());
    List<String> picked = new ArrayList<>();
    second
        .first()
        .forEach(
            (kind, first) ->
                picking
                    .of(first.lot())
                    .map(p -> season.day(p.from()).toEpochDay())
                    .map(day -> again.plusDays(day - season.on(first.sown()).toEpochDay()))
                    .ifPresent(
                        day -> picked.add(kind + " from " + TableFormat.day(MonthDay.from(day)))));
    return "On ground that is free by then."
        + (picked.isEmpty() ? "" : " Picked: " + String.join(", ", picked) + ".")
        + " The harvest counts the first sowing only.";
  }
}
