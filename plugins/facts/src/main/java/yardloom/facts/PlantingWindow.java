package yardloom.facts;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.YearDay;

/**
 * When a kind of plant may be planted.
 *
 * @param plant the catalogue name
 * @param phase in which it is planted: before the cardboard, or through it
 * @param periods in the order of the growing year, at least one; those of bare roots and of pots
 *     may overlap
 */
public record PlantingWindow(String plant, WorkPhase phase, List<Period> periods) {
  private static final int DAYS_AHEAD = 731;

  public PlantingWindow {
    periods = List.copyOf(periods);
    if (periods.isEmpty()) {
      throw new IllegalArgumentException(plant + " has no days of planting");
    }
  }

  /**
   * A stretch of the year, both ends included; it may run across New Year.
   *
   * @param how as what it is planted then, such as {@code bare root}
   */
  public record Period(String how, Derived<MonthDay> from, Derived<MonthDay> until) {
    public boolean holds(LocalDate date) {
      return YearDay.isWithin(date, from.value(), until.value());
    }
  }

  /** The first period that holds a date, if any does. */
  public Optional<Period> on(LocalDate date) {
    return periods.stream().filter(p -> p.holds(date)).findFirst();
  }

  /** The first date from {@code date} on that a period holds. */
  public LocalDate next(LocalDate date) {
    for (int ahead = 0; ahead < DAYS_AHEAD; ahead++) {
      if (on(date.plusDays(ahead)).isPresent()) {
        return date.plusDays(ahead);
      }
    }
    throw new IllegalStateException("no day within two years is one of " + periods);
  }

  /** The last date of the days in a row that begin with {@code date}; a year later at the most. */
  public LocalDate until(LocalDate date) {
    LocalDate last = date;
    while (on(last.plusDays(1)).isPresent() && last.isBefore(date.plusYears(1))) {
      last = last.plusDays(1);
    }
    return last;
  }
}
