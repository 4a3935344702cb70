package yardloom.kernel.check;

import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;

/**
 * What the plan's author has decided about findings of a rule: they are known and stay.
 *
 * @param rule plugin and name of the rule
 * @param element the one element it is accepted for, as findings name it ({@code bed "Herbs"});
 *     empty for all
 * @param why the reason, printed with the finding
 */
public record Acceptance(String rule, Optional<String> element, String why) {
  /** On the plan, any number. */
  public static final AttributeKey<Acceptance> KEY =
      new AttributeKey<>("kernel.accepted", Acceptance.class);

  /** Whether it speaks of {@code finding}; what must be changed is never accepted. */
  public boolean covers(Finding finding) {
    return finding.severity() != Severity.ERROR
        && finding.rule().equals(rule)
        && element
            .map(e -> finding.element().filter(id -> id.isCalled(e)).isPresent())
            .orElse(true);
  }
}
