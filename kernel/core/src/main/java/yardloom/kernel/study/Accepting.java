package yardloom.kernel.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.check.Acceptance;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.source.Source;

/**
 * Marks the findings that the plan accepts, and tells of acceptances that are for nothing: a
 * finding that has gone should not be accepted in silence when it comes back.
 */
final class Accepting {
  private static final String RULE = "kernel.accept";
  private static final Source PLAN = Source.plan("acceptances of the plan");

  private Accepting() {}

  /**
   * The findings, accepted ones under {@link Severity#ACCEPTED} with the reason as their advice.
   *
   * @param rules the names of all rules that are loaded
   */
  static List<Finding> of(Plan plan, List<Finding> findings, Set<String> rules) {
    List<Attributes.Entry<Acceptance>> said = plan.attributes().all(Acceptance.KEY);
    Set<Attributes.Entry<Acceptance>> used = new HashSet<>();
    List<Finding> all = new ArrayList<>();
    for (Finding finding : findings) {
      Finding now = finding;
      for (Attributes.Entry<Acceptance> entry : said) {
        if (entry.value().covers(finding)) {
          used.add(entry);
          now = finding.accepted(entry.value().why());
        }
      }
      all.add(now);
    }
    said.stream().filter(e -> !used.contains(e)).forEach(e -> all.add(idle(e, findings, rules)));
    return all;
  }

  private static Finding idle(
      Attributes.Entry<Acceptance> entry, List<Finding> findings, Set<String> rules) {
    String rule = entry.value().rule();
    Set<String> known = new TreeSet<>(rules);
    findings.forEach(f -> known.add(f.rule()));
    boolean error =
        findings.stream().anyMatch(f -> f.rule().equals(rule) && f.severity() == Severity.ERROR);
    String text =
        error
            ? "'" + rule + "' is an error here and cannot be accepted"
            : known.contains(rule)
                ? "nothing is found by '"
                    + rule
                    + "'"
                    + entry.value().element().map(e -> " about " + e).orElse("")
                    + ": nothing is accepted"
                : "no rule is called '" + rule + "'." + near(rule, known);
    return Finding.of(
            RULE,
            known.contains(rule) && !error ? Severity.NOTE : Severity.WARNING,
            text,
            error ? "change what it says" : "write the rule as the list of findings does",
            PLAN)
        .at(entry.place());
  }

  private static String near(String rule, Set<String> known) {
    String hint = Nearest.hint(rule, known);
    if (!hint.isEmpty()) {
      return hint;
    }
    List<String> alike = Nearest.sharingAWord(rule, known);
    return alike.isEmpty() ? "" : " There is " + String.join(", ", alike);
  }
}
