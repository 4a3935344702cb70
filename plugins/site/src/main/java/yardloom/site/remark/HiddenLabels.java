package yardloom.site.remark;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;

/** Which labels the plan hides; a name that hides nothing is a finding. */
public final class HiddenLabels implements Check {
  /** Whether the label of {@code element} is to be drawn. */
  public static boolean shows(Plan plan, Element element) {
    return plan.attributes().all(Remark.HIDDEN).stream()
        .noneMatch(e -> names(element).contains(e.value()));
  }

  /** Some may be the same: a bed may be called "bed". */
  private static List<String> names(Element element) {
    return List.of(element.id().name(), element.id().kind().word(), element.id().toString());
  }

  @Override
  public String id() {
    return "site.hidden-label";
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    Set<String> known = new TreeSet<>();
    plan.elements().forEach(element -> known.addAll(names(element)));
    List<Finding> findings = new ArrayList<>();
    for (var entry : plan.attributes().all(Remark.HIDDEN)) {
      if (!known.contains(entry.value())) {
        findings.add(
            Finding.of(
                    id(),
                    Severity.WARNING,
                    "no element and no kind is called '"
                        + entry.value()
                        + "', so no label is hidden."
                        + Nearest.hint(entry.value(), known),
                    "write the name as the plan does, or a kind such as 'path'",
                    Source.plan("names of the plan"))
                .at(entry.place()));
      }
    }
    return findings;
  }
}
