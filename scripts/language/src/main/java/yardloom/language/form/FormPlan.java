package yardloom.language.form;

import java.util.List;
import yardloom.kernel.problem.Problem;

/**
 * A plan in its JSON form.
 *
 * @param problems what reading found; a plan with problems is not run
 */
public record FormPlan(List<Step> steps, List<Problem> problems) {
  public FormPlan {
    steps = List.copyOf(steps);
    problems = List.copyOf(problems);
  }

  /** The parameters that may be given another value. */
  public List<String> parameters() {
    return names(false);
  }

  /** The parameters whose values are worked into the rest. */
  public List<String> fixed() {
    return names(true);
  }

  private List<String> names(boolean fixed) {
    return steps.stream()
        .filter(s -> s instanceof Step.Param p && p.fixed() == fixed)
        .map(s -> ((Step.Param) s).name())
        .distinct()
        .sorted()
        .toList();
  }
}
