package yardloom.work.phase;

import java.time.LocalDate;
import java.time.Month;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import yardloom.facts.Stand;
import yardloom.work.labour.WorkSettings;

/**
 * On which working days the crew looks after what it planted: weekly while plants grow, none while
 * they rest, until all visits are made. What is planted in spring has its visits then, what is
 * planted in autumn has some before and the others after winter.
 *
 * @param first working day of the first visit, counted as in {@link PhaseSchedule}
 * @param days from the first to the last one, both counted
 * @param pauses whether winter lies between
 */
record LookAfter(int first, int days, boolean pauses) {
  private static final int WEEK = 5;

  /** More weeks than that have no visits in them. */
  private static final int LONGEST_WEEKS = 156;

  /**
   * Months in which half or more of the new plants' ground draws water; all where none is known.
   */
  static Set<Month> growing(List<Stand> stands) {
    Set<Month> months = EnumSet.noneOf(Month.class);
    double all = stands.stream().filter(s -> !s.stands()).mapToDouble(LookAfter::area).sum();
    for (Month month : Month.values()) {
      double drawing =
          stands.stream()
              .filter(s -> !s.stands() && s.kc().get(month.getValue() - 1) > 0)
              .mapToDouble(LookAfter::area)
              .sum();
      if (all > 0 && drawing >= all / 2) {
        months.add(month);
      }
    }
    return months.isEmpty() ? EnumSet.allOf(Month.class) : months;
  }

  private static double area(Stand stand) {
    return stand.area().squareMetres();
  }

  /** From working day {@code day} on. */
  static LookAfter of(WorkSettings work, int day, Set<Month> growing) {
    int visits = Math.max(1, work.visits().value());
    if (work.start().isEmpty()) {
      return new LookAfter(day, (visits - 1) * WEEK + 1, false);
    }
    LocalDate start = work.start().get();
    int first = -1;
    int last = day;
    int made = 0;
    for (int week = 0; made < visits && week < LONGEST_WEEKS; week++) {
      int at = day + week * WEEK;
      if (growing.contains(work.workdays().day(start, at).getMonth())) {
        first = first < 0 ? at : first;
        last = at;
        made++;
      }
    }
    first = first < 0 ? day : first;
    return new LookAfter(first, last - first + 1, last - first > (visits - 1) * WEEK);
  }
}
