package yardloom.work.phase;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.facts.PlantingWindow;
import yardloom.facts.work.WorkPhase;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

/**
 * On which days the crew looks after what it planted.
 *
 * <p>After each planting one, two, four and six weeks later, so four times in the first 45 days,
 * when roots are no wider than the pot; not in months that freeze. The other visits lie evenly in
 * the dry months of the year that follows the first planting, and, where those are too few, weekly
 * while plants grow. A quarter of the visits is kept for the dry months; where the others do not
 * suffice for all plantings, the first weeks of each go before the later ones.
 *
 * <p>References: the weeks are common practice, without a source; dry months are those of {@link
 * CareMonths}.
 */
final class LookAfter {
  private static final List<Integer> WEEKS = List.of(1, 2, 4, 6);
  private static final int DAYS = 7;
  private static final int FIRST_DAYS = 45;

  /** One of so many visits at least is kept for the dry months. */
  private static final int DRY_PART = 4;

  /** A visit serves what is due this many days before or after it. */
  private static final int NEAR_DAYS = 3;

  private static final int HALF_YEAR_WEEKS = 26;

  /** More weeks than that have no visits in them. */
  private static final int LONGEST_WEEKS = 156;

  private static final String DRY = "a dry month: plants need more than it rains";

  private LookAfter() {}

  /** The days on which trees and plants are planted, by the phases and the visits that follow. */
  static SortedSet<LocalDate> plantings(
      List<PhaseTime> times, List<PlantingWindow> windows, Workdays days) {
    SortedSet<LocalDate> dates = new TreeSet<>();
    for (PhaseTime time : times) {
      WorkPhase id = time.phase().id();
      if (id == WorkPhase.TREES || id == WorkPhase.PLANT) {
        time.start().ifPresent(dates::add);
        PlantingVisit.laterThan(time, windows, days).forEach(v -> dates.add(v.date()));
      }
    }
    return dates;
  }

  /** By date, at most as many as the plan says and at least one; none without plantings. */
  static List<CareVisit> of(WorkSettings work, Collection<LocalDate> plantings, CareMonths months) {
    if (plantings.isEmpty()) {
      return List.of();
    }
    int most = Math.max(1, work.visits().value());
    SortedSet<LocalDate> planted = new TreeSet<>(plantings);
    int kept = months.dry().isEmpty() ? 0 : most / DRY_PART;
    SortedMap<LocalDate, String> visits = firstWeeks(work.workdays(), planted, months, most - kept);
    Set<Month> growing = EnumSet.copyOf(months.growing());
    growing.addAll(months.dry());
    // From the Monday after the first weeks on.
    LocalDate from =
        planted
            .last()
            .plusWeeks(WEEKS.get(WEEKS.size() - 1))
            .with(TemporalAdjusters.next(DayOfWeek.MONDAY));
    // The first dry season, not that of a second year.
    long year = ChronoUnit.WEEKS.between(from, planted.first().plusYears(1));
    int weeks = (int) Math.max(HALF_YEAR_WEEKS, year);
    spread(visits, most, weeks(work.workdays(), from, weeks, months.dry()));
    for (LocalDate date : weeks(work.workdays(), from, LONGEST_WEEKS, growing)) {
      if (visits.size() < most && isFree(visits, date)) {
        visits.put(date, "plants grow");
      }
    }
    List<CareVisit> numbered = new ArrayList<>();
    visits.forEach((date, why) -> numbered.add(new CareVisit(numbered.size() + 1, date, why)));
    return List.copyOf(numbered);
  }

  private static SortedMap<LocalDate, String> firstWeeks(
      Workdays days, SortedSet<LocalDate> plantings, CareMonths months, int most) {
    SortedMap<LocalDate, String> visits = new TreeMap<>();
    for (int week : WEEKS) {
      for (LocalDate planted : plantings) {
        LocalDate date = days.day(planted.plusDays((long) DAYS * week), 1);
        if (visits.size() < most
            && months.thawed().contains(date.getMonth())
            && soon(visits, planted) < WEEKS.size()
            && isFree(visits, date)) {
          visits.put(date, week == 1 ? "a week after planting" : week + " weeks after planting");
        }
      }
    }
    return visits;
  }

  /** Visits in the first days after a planting, whichever planting they are for. */
  private static long soon(Map<LocalDate, String> visits, LocalDate planted) {
    return visits.keySet().stream()
        .filter(v -> v.isAfter(planted) && !v.isAfter(planted.plusDays(FIRST_DAYS)))
        .count();
  }

  /** The first working day of each week, if it lies in one of the months. */
  private static List<LocalDate> weeks(
      Workdays days, LocalDate from, int count, Set<Month> months) {
    List<LocalDate> dates = new ArrayList<>();
    for (int week = 0; week < count; week++) {
      LocalDate date = days.day(from.plusWeeks(week), 1);
      if (months.contains(date.getMonth())) {
        dates.add(date);
      }
    }
    return dates;
  }

  /** What is left of the visits, as evenly over the free ones of the dates as whole weeks allow. */
  private static void spread(Map<LocalDate, String> visits, int most, List<LocalDate> dates) {
    List<LocalDate> free = dates.stream().filter(d -> isFree(visits, d)).toList();
    int left = Math.min(most - visits.size(), free.size());
    for (int i = 0; i < left; i++) {
      // The middle of each of as many equal parts.
      visits.put(free.get((2 * i + 1) * free.size() / (2 * left)), DRY);
    }
  }

  private static boolean isFree(Map<LocalDate, String> visits, LocalDate date) {
    return visits.keySet().stream()
        .noneMatch(v -> Math.abs(ChronoUnit.DAYS.between(v, date)) <= NEAR_DAYS);
  }
}
