package yardloom.work.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.work.WorkPhase;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.fact.FactKey;
import yardloom.work.labour.WorkSettings;

/**
 * When a phase is worked.
 *
 * @param begins in working days since the first morning: 2.25 is the third day after a quarter of
 *     its hours
 * @param ends likewise, waiting included, no earlier than it begins
 * @param hours likely hours of one person
 * @param start its first date, if the plan gives a start
 * @param end its last date
 * @param why what holds it back, or empty
 */
public record PhaseTime(
    Phase phase,
    double begins,
    double ends,
    double hours,
    Optional<LocalDate> start,
    Optional<LocalDate> end,
    String why) {
  /** Phases with their days, in working order. */
  public static final FactKey<PhaseTime> FACT =
      FactKey.many("work.phases", PhaseTime.class).called("phases").byPart();

  /** What comes after the crew has gone. */
  private static final Set<WorkPhase> AFTER = Set.of(WorkPhase.LATER, WorkPhase.ESTABLISH);

  /** The same with those texts of its phase only that hold, see {@link Phase#doing}. */
  PhaseTime doing(Set<WorkTask> tasks, Set<WorkTask> ofPlan, Set<PlantedGround> ground) {
    return new PhaseTime(phase.doing(tasks, ofPlan, ground), begins, ends, hours, start, end, why);
  }

  /** The same with its dates, if the work has a start. */
  PhaseTime dated(WorkSettings work) {
    return new PhaseTime(
        phase,
        begins,
        ends,
        hours,
        work.start().map(s -> work.workdays().day(s, firstDay())),
        work.start().map(s -> work.workdays().day(s, lastDay())),
        why);
  }

  /** The working day on which it begins, counted from 1. */
  public int firstDay() {
    return (int) CrewDays.morning(begins) + 1;
  }

  /** Working days begun, waiting included, at least 1; two phases may share one. */
  public int days() {
    return Math.max(1, (int) CrewDays.evening(ends) - (int) CrewDays.morning(begins));
  }

  /** What share of its first day is gone when it begins, from 0 to below 1. */
  public double gone() {
    return Math.max(0, begins - CrewDays.morning(begins));
  }

  /** The working day on which it ends. */
  public int lastDay() {
    return firstDay() + days() - 1;
  }

  /** The last of phases in working order before the crew goes. */
  public static PhaseTime lastOfWork(List<PhaseTime> phases) {
    return phases.stream()
        .filter(p -> !AFTER.contains(p.phase().id()))
        .reduce((a, b) -> b)
        .orElse(phases.get(0));
  }
}
