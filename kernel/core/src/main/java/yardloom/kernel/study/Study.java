package yardloom.kernel.study;

import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Again;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.spi.Plugins;

/**
 * Runs calculators, checks, table makers and painters over a plan, once each, in an order that
 * depends only on what is loaded.
 */
public final class Study {
  private final Plugins plugins;

  public Study(Plugins plugins) {
    this.plugins = plugins;
  }

  /**
   * All results of the plan.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public Outcome of(Plan plan) {
    return of(plan, Again.AFRESH);
  }

  /**
   * The same; {@code again} says whose earlier results still hold.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public Outcome of(Plan plan, Again again) {
    return new StudyRun(plugins, plan, plugins.graph().run(plan, again), again).outcome();
  }

  /**
   * What the checks find, without tables, drawings and sheets; the same as those of {@link #of}.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make a calculation impossible
   */
  public List<Finding> check(Plan plan) {
    return new StudyRun(plugins, plan, plugins.graph().run(plan), Again.AFRESH).findings();
  }
}
