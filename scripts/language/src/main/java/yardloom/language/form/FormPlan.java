package yardloom.language.form;

import java.util.List;
import java.util.TreeSet;
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
    TreeSet<String> names = new TreeSet<>();
    for (Step step : steps) {
      if (step instanceof Step.Param p && !p.fixed()) {
        names.add(p.name());
      }
    }
    return List.copyOf(names);
  }

  /** The parameters whose values are worked into the rest. */
  public List<String> fixed() {
    TreeSet<String> names = new TreeSet<>();
    for (Step step : steps) {
      if (step instanceof Step.Param p && p.fixed()) {
        names.add(p.name());
      }
    }
    return List.copyOf(names);
  }
}
