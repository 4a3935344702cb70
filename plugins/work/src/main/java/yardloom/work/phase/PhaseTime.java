package yardloom.work.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.FactKey;

/**
 * When a phase is worked.
 *
 * @param firstDay working day, counted from 1
 * @param days working days on the calendar, waiting included, at least 1
 * @param hours likely hours of one person
 * @param start its first date, if the plan gives a start
 * @param end its last date
 * @param why what holds it back, or empty
 */
public record PhaseTime(
    Phase phase,
    int firstDay,
    int days,
    double hours,
    Optional<LocalDate> start,
    Optional<LocalDate> end,
    String why) {
  /** Phases with their days, in working order. */
  public static final FactKey<PhaseTime> FACT =
      FactKey.many("work.phases", PhaseTime.class).called("phases").byPart();

  /** The last of phases in working order before the yard is only looked after. */
  public static PhaseTime lastOfWork(List<PhaseTime> phases) {
    return phases.stream()
        .filter(p -> p.phase().id() != WorkPhase.ESTABLISH)
        .reduce((a, b) -> b)
        .orElse(phases.get(0));
  }
}
