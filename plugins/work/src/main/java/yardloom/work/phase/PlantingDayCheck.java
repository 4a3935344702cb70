package yardloom.work.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.TableFormat;

/** Says which plants the schedule would set out before their usual day. */
public final class PlantingDayCheck implements Check {
  /** A day further ahead belongs to the next growing year; the plants of this one are late. */
  private static final int HALF_A_YEAR = 183;

  @Override
  public String id() {
    return "work.planting-day";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PhaseTime.FACT, YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Optional<PhaseTime> planting =
        facts.all(PhaseTime.FACT).stream()
            .filter(p -> p.phase().id() == WorkPhase.PLANT && p.start().isPresent())
            .findFirst();
    if (planting.isEmpty()) {
      return List.of();
    }
    LocalDate start = planting.get().start().orElseThrow();
    LocalDate end = planting.get().end().orElseThrow();
    List<PlantingWindow> early =
        facts.all(YardFacts.PLANTING_WINDOWS).stream().filter(w -> isEarly(end, w)).toList();
    if (early.isEmpty()) {
      return List.of();
    }
    StringBuilder names = new StringBuilder();
    for (PlantingWindow w : early) {
      names
          .append(names.isEmpty() ? "" : ", ")
          .append(w.plant())
          .append(" from ")
          .append(TableFormat.day(w.springFrom().value()));
    }
    return List.of(
        Finding.of(
            id(),
            Severity.NOTE,
            "Planting is set for " + start + " to " + end + "; usual is " + names + ".",
            "Plant these later, raise them under cover, or start the work later.",
            early.get(0).springFrom().source()));
  }

  private static boolean isEarly(LocalDate end, PlantingWindow window) {
    LocalDate from = window.springFrom().value().atYear(end.getYear());
    return end.isBefore(from) && from.isBefore(end.plusDays(HALF_A_YEAR));
  }
}
