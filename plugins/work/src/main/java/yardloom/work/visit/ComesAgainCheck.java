package yardloom.work.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.TableFormat;

/** Whether the crew must come again, after all else is done, for kinds out of season till then. */
public final class ComesAgainCheck implements Check {
  private static final Source RULE =
      Source.commonPractice("each kind is planted within its own days");

  @Override
  public String id() {
    return "work.comes-again";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(SiteVisit.FACT);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<SiteVisit> visits = facts.all(SiteVisit.FACT);
    List<SiteVisit> again =
        visits.stream()
            .filter(v -> v.phases().isEmpty() || v.phases().equals(List.of(WorkPhase.LATER)))
            .filter(v -> v.from().isPresent())
            .toList();
    if (again.isEmpty()) {
      return List.of();
    }
    Optional<LocalDate> done =
        visits.stream()
            .filter(v -> !again.contains(v) && !v.phases().contains(WorkPhase.ESTABLISH))
            .flatMap(v -> v.to().stream())
            .max(LocalDate::compareTo);
    return List.of(
        Finding.of(
            id(),
            Severity.NOTE,
            "The rest is done on "
                + done.map(TableFormat::date).orElse("other days")
                + ", when not all kinds are in season: the crew comes again on "
                + again.stream().map(ComesAgainCheck::said).collect(Collectors.joining(" and on "))
                + ".",
            "Agree on these days, or let the household plant those kinds.",
            RULE));
  }

  private static String said(SiteVisit visit) {
    List<String> what = new ArrayList<>();
    if (!visit.kinds().isEmpty()) {
      what.add("plant " + String.join(", ", visit.kinds()));
    }
    if (visit.phases().contains(WorkPhase.LATER)) {
      what.add("mulch what is planted later");
    }
    return TableFormat.date(visit.from().orElseThrow()) + " to " + String.join(" and ", what);
  }
}
