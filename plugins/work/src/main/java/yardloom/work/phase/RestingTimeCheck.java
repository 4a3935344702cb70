package yardloom.work.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;

/** Cardboard needs months before roots of annuals pass it. */
public final class RestingTimeCheck implements Check {
  private static final Source SOURCE =
      Source.read(
          "Create vegetable beds with lasagna mulching",
          "Oregon State University Extension",
          2009,
          "7 May: six months or longer");
  private static final int MONTHS = 6;

  @Override
  public String id() {
    return "work.resting-time";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PhaseTime.FACT, PlantingVisit.FACT, YardFacts.STANDS, YardFacts.SURFACES);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Set<ElementId> annual =
        facts.all(YardFacts.SURFACES).stream()
            .filter(s -> s.kind() == SurfaceKind.ANNUAL_BED && s.sheets().isPresent())
            .map(MulchSurface::of)
            .collect(Collectors.toSet());
    Optional<LocalDate> laid = date(facts, WorkPhase.SHEET);
    Optional<LocalDate> planted = firstVisit(facts, annual).or(() -> date(facts, WorkPhase.PLANT));
    if (annual.isEmpty() || laid.isEmpty() || planted.isEmpty()) {
      return List.of();
    }
    if (!planted.get().isBefore(laid.get().plusMonths(MONTHS))) {
      return List.of();
    }
    return List.of(
        Finding.of(
            "work.resting-time",
            Severity.NOTE,
            "Annual beds are planted on "
                + TableFormat.date(planted.get())
                + ", less than six months after the cardboard is laid ("
                + TableFormat.date(laid.get())
                + ").",
            "Cut holes for transplants, or lay in autumn for planting in spring.",
            SOURCE));
  }

  /** When the first of what grows in those beds is planted, if its seasons are known. */
  private static Optional<LocalDate> firstVisit(Facts facts, Set<ElementId> beds) {
    Set<String> kinds =
        facts.all(YardFacts.STANDS).stream()
            .filter(s -> beds.contains(s.in()) && !s.planted().stands())
            .map(Stand::plant)
            .collect(Collectors.toSet());
    return facts.all(PlantingVisit.FACT).stream()
        .filter(v -> v.kinds().keySet().stream().anyMatch(kinds::contains))
        .map(PlantingVisit::date)
        .findFirst();
  }

  private static Optional<LocalDate> date(Facts facts, WorkPhase phase) {
    return facts.all(PhaseTime.FACT).stream()
        .filter(t -> t.phase().id() == phase)
        .findFirst()
        .flatMap(t -> t.start());
  }
}
