package yardloom.water.timetable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.water.need.DriplineDay;
import yardloom.water.need.NewPlants;
import yardloom.water.need.formula.Taper;
import yardloom.water.timetable.FirstWeeks.Wait;
import yardloom.water.timetable.FirstWeeks.Wait.Reason;

/** What goes before the timer: plants that wait for dripline, dripline that waits for plants. */
final class FirstWaits {
  private FirstWaits() {}

  /**
   * What comes before the timer: plants set before the dripline drink from the can, dripline laid
   * before plants is shut, so that no bare ground is watered.
   */
  static List<Wait> waits(List<NewPlants> groups, Facts in) {
    Optional<LocalDate> runs = DriplineDay.runs(in);
    List<Wait> waits = new ArrayList<>();
    if (runs.isEmpty()) {
      return waits;
    }
    LocalDate laid = runs.get();
    LocalDate grows = groups.get(0).grows();
    LocalDate planted =
        groups.stream().map(NewPlants::planted).min(LocalDate::compareTo).orElse(grows);
    add(waits, grows, earlier(laid, grows.plusDays(Taper.DAYS)), Reason.BY_CAN);
    if (groups.stream().noneMatch(g -> isGreen(g, in))) {
      add(waits, laid, planted, Reason.BARE);
      add(waits, laid.isAfter(planted) ? laid : planted, grows, Reason.RESTS);
    }
    return waits;
  }

  /** Whether something grows in its bed already. */
  private static boolean isGreen(NewPlants group, Facts in) {
    return in.all(YardFacts.STANDS).stream().anyMatch(s -> s.stands() && s.in().equals(group.in()))
        || NewPlants.of(in).stream()
            .anyMatch(o -> o.in().equals(group.in()) && o.grows().isBefore(group.grows()));
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  private static void add(List<Wait> waits, LocalDate from, LocalDate end, Reason reason) {
    if (from.isBefore(end)) {
      waits.add(new Wait(from, end.minusDays(1), reason));
    }
  }
}
