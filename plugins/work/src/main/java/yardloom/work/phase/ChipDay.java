package yardloom.work.phase;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

/**
 * When chips can lie over ground of which some is planted in another season: after the last visit
 * that plants there, but for those after a summer. What stands already is mulched before it, and
 * what comes in fall is set through the chips (common practice).
 */
final class ChipDay {
  /** Eight weeks of the warm season; compost that lies open longer dries out and weeds come. */
  private static final int LONGEST_OPEN_DAYS = 56;

  private ChipDay() {}

  /**
   * When the crew is free for the chips, in working days; 0 where no later visit plants any of
   * {@code kinds}.
   */
  static double after(
      List<PhaseTime> times, PhaseSchedule.Given given, Set<String> kinds, CrewDays days) {
    WorkSettings work = given.work();
    Workdays workdays = work.workdays();
    List<PlantingVisit> visits =
        times.stream()
            .flatMap(t -> PlantingVisit.all(t, given.windows(), workdays).stream())
            .filter(visit -> visit.kinds().keySet().stream().anyMatch(kinds::contains))
            .sorted(Comparator.comparing(PlantingVisit::date))
            .toList();
    double last = 0;
    LocalDate before = null;
    for (PlantingVisit visit : visits) {
      if (before != null && isSummerBetween(before, visit.date(), work)) {
        break;
      }
      before = visit.date();
      if (visit.number() > 1) {
        int day = workdays.number(work.start().orElseThrow(), before);
        last = Math.max(last, days.end(day - 1, visit.hours(given.kinds()), 0));
      }
    }
    return last;
  }

  /** Whether what is planted first would stand through the warm months in open compost. */
  private static boolean isSummerBetween(LocalDate first, LocalDate second, WorkSettings work) {
    long apart = ChronoUnit.DAYS.between(first, second);
    return apart > LONGEST_OPEN_DAYS
        && work.lastFrost().isPresent()
        && work.firstFrost().isPresent()
        && !PhaseSchedule.inFrostWindow(first.plusDays(apart / 2), work);
  }
}
