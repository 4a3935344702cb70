package yardloom.water.timetable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.DriplineDay;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.NewPlants;
import yardloom.water.need.TaperNeed;
import yardloom.water.need.formula.Taper;
import yardloom.water.timetable.FirstWeeks.Wait;
import yardloom.water.timetable.FirstWeeks.Wait.Reason;

/** What goes before the timer: plants that wait for dripline, dripline that waits for plants. */
final class FirstWaits {
  private static final Source EACH = Source.commonPractice("what all take on one day");

  private FirstWaits() {}

  /**
   * What comes before the timer: plants set before the dripline drink from the can, dripline laid
   * before plants is shut, so that no bare ground is watered.
   */
  static List<Wait> waits(Plan plan, List<NewPlants> groups, Facts in) {
    Optional<LocalDate> runs = DriplineDay.runs(in);
    List<Wait> waits = new ArrayList<>();
    if (runs.isEmpty()) {
      return waits;
    }
    LocalDate laid = runs.get();
    LocalDate grows = groups.get(0).grows();
    LocalDate planted =
        groups.stream().map(NewPlants::planted).min(LocalDate::compareTo).orElse(grows);
    add(
        waits,
        grows,
        earlier(laid, grows.plusDays(Taper.DAYS)),
        Reason.BY_CAN,
        daily(plan, groups, in));
    if (groups.stream().noneMatch(g -> isGreen(g, in))) {
      add(waits, laid, planted, Reason.BARE, Optional.empty());
      add(waits, laid.isAfter(planted) ? laid : planted, grows, Reason.RESTS, Optional.empty());
    }
    return waits;
  }

  /** Whether something grows in its bed already. */
  private static boolean isGreen(NewPlants group, Facts in) {
    return in.all(YardFacts.STANDS).stream()
            .anyMatch(s -> s.planted().stands() && s.in().equals(group.in()))
        || NewPlants.of(in).stream()
            .anyMatch(o -> o.in().equals(group.in()) && o.grows().isBefore(group.grows()));
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  /** In the first step, in which every day has a watering. */
  private static Optional<Derived<Volume>> daily(Plan plan, List<NewPlants> groups, Facts in) {
    Taper.Step step = Taper.STEPS.get(0);
    Derived.Builder why = Derived.by("sum over plants of water", EACH);
    Volume all = Volume.ZERO;
    for (NewPlants group : groups) {
      Derived<Volume> water = TaperNeed.each(plan, group, step, in.get(MonthlyWeather.KEY));
      all = all.plus(water.value());
      why.from("water for " + group.kinds() + " in " + group.in().name(), water);
    }
    return Optional.of(why.gives(all.times(1.0 / step.everyDays())));
  }

  private static void add(
      List<Wait> waits,
      LocalDate from,
      LocalDate end,
      Reason reason,
      Optional<Derived<Volume>> daily) {
    if (from.isBefore(end)) {
      waits.add(new Wait(from, end.minusDays(1), reason, daily));
    }
  }
}
