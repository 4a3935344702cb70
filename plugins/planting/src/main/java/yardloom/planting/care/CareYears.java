package yardloom.planting.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.TopUp;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.care.Lots.Lot;
import yardloom.planting.care.formula.Season;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;

/** Lays the acts of care out over the seasons of one yard. */
final class CareYears {
  private static final Source SOWN = Source.commonPractice("annuals are sown again each season");
  private static final Source THINNED = Source.plan("thinning as the plan says");
  private static final int DAILY = 14;
  private static final int ROOTED = 45;
  private static final int THAW = -21;
  private static final int LEAF_FALL = 14;

  private final Facts in;
  private final FrostDates frost;
  private final UnitSystem units;
  private final Lots lots;
  private final LocalDate start;
  private final int firstYear;
  private final boolean frozen;
  private final List<CareAct> acts = new ArrayList<>();

  CareYears(Plan plan, Facts in, FrostDates frost, LocalDate start, Lots lots) {
    this.in = in;
    this.frost = frost;
    this.lots = lots;
    this.start = start;
    units = plan.info().units();
    firstYear = firstSeason(start);
    frozen = in.find(YardFacts.CLIMATE).map(CareYears::freezes).orElse(true);
  }

  /** Whether the coldest month is below freezing. */
  private static boolean freezes(ClimateNormals climate) {
    return climate.months().stream().anyMatch(m -> m.mean().celsius() < 0);
  }

  private int firstSeason(LocalDate planted) {
    return Season.firstOf(planted, frost.lastOfSpring().value(), frost.firstOfFall().value())
        .year();
  }

  private Season season(int year) {
    return Season.of(year, frost.lastOfSpring().value(), frost.firstOfFall().value());
  }

  List<CareAct> acts() {
    planting();
    sowAgain();
    thinOut();
    for (CareRow row : CareRow.SHIPPED) {
      if (!row.onlyFrozen() || frozen) {
        row(row);
      }
    }
    return acts.stream().sorted().toList();
  }

  private void planting() {
    Map<LocalDate, TreeSet<String>> visits = new TreeMap<>();
    for (Lot lot : lots.all()) {
      lot.planted()
          .ifPresent(d -> visits.computeIfAbsent(d, k -> new TreeSet<>()).add(lot.plant().name()));
    }
    int visit = 0;
    for (Map.Entry<LocalDate, TreeSet<String>> e : visits.entrySet()) {
      visit++;
      List<String> kinds = List.copyOf(e.getValue());
      LocalDate day = e.getKey();
      give(
          "plant-" + visit,
          Act.PLANT,
          "Plant",
          kinds,
          day,
          day,
          "Water in at once; mulch a hand's width off every stem.",
          SOWN_IN);
      water("water-" + visit, kinds, day);
    }
  }

  private static final Source SOWN_IN =
      Source.commonPractice("plants are watered in and stems kept free of mulch");

  /** From the thaw to leaf fall only: what is dormant asks for no water beyond the first. */
  private void water(String key, List<String> kinds, LocalDate planted) {
    Season now = season(planted.getYear());
    if (planted.isAfter(now.firstFrost().plusDays(LEAF_FALL))) {
      now = season(planted.getYear() + 1);
    } else if (planted.isBefore(season(planted.getYear() - 1).firstFrost().plusDays(LEAF_FALL))) {
      now = season(planted.getYear() - 1);
    }
    LocalDate thaw = now.lastFrost().plusDays(THAW);
    LocalDate from = planted.isAfter(thaw) ? planted : thaw;
    LocalDate end = now.firstFrost().plusDays(LEAF_FALL);
    Source source = CareRow.sources().source("AUG");
    give(
        key + "-daily",
        Act.WATER,
        "Water daily",
        kinds,
        from,
        earlier(from.plusDays(DAILY - 1), end),
        "Unless it rained: feel the root ball a finger deep, it stays moist, never wet.",
        source);
    LocalDate then = from.plusDays(DAILY);
    if (!then.isAfter(end)) {
      give(
          key + "-taper",
          Act.WATER,
          "Water less often",
          kinds,
          then,
          earlier(from.plusDays(ROOTED - 1), end),
          "Every second, then every third day, deeper each time; weekly from then on, unless it rains.",
          source);
    }
  }

  private static LocalDate earlier(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
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
    acts.add(new CareAct(key, act, what, kinds, 1, from, until, Optional.empty(), 0, how, source));
  }

  /** Annuals in the seasons after the first, and second sowings, in the days that tables have. */
  private void sowAgain() {
    record Sowing(String key, String how, PlantingWindow.Period period, TreeSet<String> kinds) {}
    Map<String, Sowing> sowings = new TreeMap<>();
    for (PlantingWindow w : in.all(YardFacts.PLANTING_WINDOWS)) {
      Optional<Lot> lot =
          lots.all().stream().filter(l -> l.plant().name().equals(w.plant())).findFirst();
      if (lot.isEmpty() || !lot.get().plant().season().isAnnual()) {
        continue;
      }
      for (PlantingWindow.Period p : w.periods()) {
        String key = slug(p.how() + " " + lot.get().plant().window()) + "-" + p.until().value();
        sowings
            .computeIfAbsent(key, k -> new Sowing(k, p.how(), p, new TreeSet<>()))
            .kinds()
            .add(w.plant());
      }
    }
    for (Sowing s : sowings.values()) {
      boolean second = s.how().startsWith("second");
      for (int n = second ? 1 : 2; n <= CareAct.GROWN; n++) {
        Season season = season(firstYear + n - 1);
        LocalDate from = season.on(s.period().from().value());
        LocalDate until = season.on(s.period().until().value());
        if (from.isAfter(start) && !until.isBefore(from)) {
          acts.add(
              new CareAct(
                  slug(s.key()),
                  Act.SOW,
                  capital(s.how()),
                  List.copyOf(s.kinds()),
                  n,
                  from,
                  until,
                  Optional.empty(),
                  1,
                  "Where another family grew last season; see When to plant.",
                  SOWN));
        }
      }
    }
  }

  /** Dense plantings, late in the winter before the season in which the plan thins them. */
  private void thinOut() {
    for (Planting p : in.get(PlantPlaces.KEY).plantings()) {
      Optional<Thinned> thinned = Thinning.of(p);
      if (thinned.isPresent() && !p.at().isEmpty()) {
        int stay = Thinning.kept(p, thinned.get()).size();
        Season season = season(firstYear + thinned.get().season() - 1);
        acts.add(
            new CareAct(
                slug("thin out " + p.bed().id().name() + " " + p.plant().name()),
                Act.THIN,
                "Thin out " + p.bed().id().name(),
                List.of(p.plant().name()),
                Math.min(thinned.get().season(), CareAct.GROWN),
                season.day(true, -60),
                season.day(true, -21),
                Optional.empty(),
                0,
                (p.at().size() - stay)
                    + " of "
                    + p.at().size()
                    + " go, "
                    + stay
                    + " stay: lift and give away, or cut at the ground.",
                THINNED));
      }
    }
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** One row of the data in every season in which it is due. */
  private void row(CareRow row) {
    for (int n = 1; n < CareAct.GROWN; n++) {
      due(row, n, firstYear + n - 1);
    }
    if (row.act() == Act.WINTER) {
      // What is planted in fall has a winter before its first season.
      due(row, 1, firstYear - 1);
    }
    if (row.last().isEmpty()) {
      int n = Math.max(CareAct.GROWN, row.first());
      due(row, CareAct.GROWN, firstYear + n - 1);
    }
  }

  private void due(CareRow row, int n, int year) {
    Season season = season(year);
    LocalDate from = season.day(row.from().afterLast(), row.from().days());
    LocalDate until = season.day(row.until().afterLast(), row.until().days());
    if (row.per() == CareRow.Per.PLANT) {
      forPlants(row, n, year, from, until);
    } else if (applies(row.who())
        && (n == CareAct.GROWN || row.isDue(Math.max(1, year - firstYear + 1)))
        && !until.isBefore(start)) {
      LocalDate begin = from.isBefore(start) ? start : from;
      add(row, n, begin, until, List.of(), byArea(row, begin, until));
    }
  }

  private boolean applies(String who) {
    return switch (who) {
      case "drip" -> !in.all(YardFacts.DRIPLINES).isEmpty();
      case "annual bed" -> lots.ground(true).squareMetres() > 0;
      default -> lots.ground(false).squareMetres() > 0;
    };
  }

  private Derived<TimeSpan> byArea(CareRow row, LocalDate from, LocalDate until) {
    if (row.per() == CareRow.Per.YARD) {
      return Derived.by("hours = minutes / 60", row.source())
          .from("minutes", row.minutes())
          .gives(TimeSpan.minutes(row.minutes()));
    }
    Area ground = lots.ground(row.who().equals("annual bed"));
    double once = row.minutes() * ground.squareFeet() / 100;
    if (row.per() == CareRow.Per.HUNDRED_SQUARE_FEET) {
      return Derived.by("hours = minutes × area in sq ft / 100 / 60", row.source())
          .from("minutes", row.minutes())
          .from("area", ground)
          .gives(TimeSpan.minutes(once));
    }
    int days = (int) (until.toEpochDay() - from.toEpochDay()) + 1;
    return Derived.by("hours = minutes × area in sq ft / 100 / 60 × days / 7", row.source())
        .from("minutes", row.minutes())
        .from("area", ground)
        .from("days", days)
        .gives(TimeSpan.minutes(once * days / 7));
  }

  private void forPlants(CareRow row, int n, int year, LocalDate from, LocalDate until) {
    List<Lot> found = new ArrayList<>();
    LocalDate begin = until;
    for (Lot lot : lots.of(row.who())) {
      int age = lot.planted().map(d -> lot.age(year, firstSeason(d))).orElse(lot.age(n, 0));
      boolean firstWinter = row.act() == Act.WINTER && age == 0;
      LocalDate planted = lot.planted().orElse(start);
      boolean due = n == CareAct.GROWN || row.isDue(firstWinter ? 1 : age);
      if ((age >= 1 || firstWinter) && due && !until.isBefore(planted)) {
        found.add(lot);
        LocalDate own = from.isBefore(planted) ? planted : from;
        begin = own.isBefore(begin) ? own : begin;
      }
    }
    if (!found.isEmpty()) {
      int count = found.stream().mapToInt(Lot::count).sum();
      Derived<TimeSpan> hours =
          Derived.by("hours = minutes each × plants / 60", row.source())
              .from("minutes each", row.minutes())
              .from("plants", count)
              .gives(TimeSpan.minutes(row.minutes() * count));
      List<String> kinds = found.stream().map(l -> l.plant().name()).distinct().toList();
      add(row, n, begin, until, kinds, hours);
    }
  }

  private void add(
      CareRow row,
      int n,
      LocalDate from,
      LocalDate until,
      List<String> kinds,
      Derived<TimeSpan> hours) {
    String how = Say.inText(row.how(), units);
    if (row.act() == Act.MULCH) {
      how += topUp(n);
    }
    acts.add(
        new CareAct(
            slug(row.what()) + (isFirstWinter(row, n, from) ? "-first-winter" : ""),
            row.act(),
            row.what(),
            kinds,
            n,
            from,
            until,
            Optional.of(hours),
            row.every(),
            how,
            row.source()));
  }

  /** What is planted in fall has a winter before its first season, beside that at its end. */
  private boolean isFirstWinter(CareRow row, int n, LocalDate from) {
    return row.act() == Act.WINTER && n == 1 && from.isBefore(season(firstYear).lastFrost());
  }

  /** What the materials of that year after laying come to. */
  private String topUp(int n) {
    for (TopUp t : in.all(YardFacts.TOP_UPS)) {
      if (t.year() == n) {
        return " About " + Say.volume(t.add().value(), units) + " in season " + n + ".";
      }
    }
    return "";
  }

  static String slug(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }
}
