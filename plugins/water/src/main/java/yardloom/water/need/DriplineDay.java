package yardloom.water.need;

import java.time.LocalDate;
import java.util.Optional;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PhaseDays;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Facts;

/** The first day on which dripline can bring water. */
public final class DriplineDay {
  private DriplineDay() {}

  /** The morning after the phase in which it is laid; empty where no start of the work is known. */
  public static Optional<LocalDate> runs(Facts in) {
    return in.all(YardFacts.PHASE_DAYS).stream()
        .filter(p -> p.phase() == WorkPhase.DRIP)
        .map(PhaseDays::to)
        .max(LocalDate::compareTo)
        .map(d -> d.plusDays(1));
  }
}
