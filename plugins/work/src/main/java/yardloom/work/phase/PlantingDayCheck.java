package yardloom.work.phase;

import java.time.LocalDate;
import java.util.ArrayList;
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
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;

/**
 * Says which kinds are out of season before the crew has done planting, and where no season is
 * known at all.
 */
public final class PlantingDayCheck implements Check {
  private static final Source RULE =
      Source.commonPractice("each kind is planted within its own days");

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
    List<Finding> findings = new ArrayList<>();
    unknown(facts).ifPresent(findings::add);
    for (PhaseTime time : facts.all(PhaseTime.FACT)) {
      outOfSeason(facts, time).ifPresent(findings::add);
    }
    return findings;
  }

  /** Without frost dates or a climate nobody knows which days are right, so the work decides. */
  private static Optional<Finding> unknown(Facts facts) {
    return facts.all(PhaseTime.FACT).stream()
        .filter(t -> t.phase().id() == WorkPhase.TREES || t.phase().id() == WorkPhase.PLANT)
        .flatMap(t -> t.start().stream())
        .findFirst()
        .filter(day -> facts.all(YardFacts.PLANTING_WINDOWS).isEmpty())
        .map(
            day ->
                Finding.of(
                    "work.planting-unknown",
                    Severity.NOTE,
                    "Planting begins on "
                        + TableFormat.date(day)
                        + " because the work does: without frost dates nobody knows whether that is"
                        + " the season of each kind.",
                    "Give them with `frost`, or ask at a nursery before the work is dated.",
                    RULE));
  }

  /** Kinds in season when their phase begins, whose days are over before the crew has done. */
  private Optional<Finding> outOfSeason(Facts facts, PhaseTime time) {
    Optional<LocalDate> end = time.end();
    if (end.isEmpty()) {
      return Optional.empty();
    }
    List<String> over =
        PlantingVisit.windowsOf(time.phase().id(), facts.all(YardFacts.PLANTING_WINDOWS)).stream()
            .filter(w -> time.start().filter(s -> w.on(s).isPresent()).isPresent())
            .filter(w -> w.on(end.get()).isEmpty())
            .map(PlantingWindow::plant)
            .toList();
    if (over.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.of(
            id(),
            Severity.WARNING,
            "Planting ends on "
                + TableFormat.date(end.get())
                + ", when "
                + String.join(", ", over)
                + (over.size() == 1 ? " is" : " are")
                + " out of season.",
            "Plant these first, start earlier, or come with more hands.",
            RULE));
  }
}
