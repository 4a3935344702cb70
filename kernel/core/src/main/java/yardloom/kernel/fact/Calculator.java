package yardloom.kernel.fact;

import java.util.Set;
import yardloom.kernel.plan.Plan;

/**
 * Reads the plan and facts, gives facts. Runs once; keeps no state; the same input gives the same
 * output.
 */
public interface Calculator {
  /** Concept and name, unique among all plugins, such as {@code sun.hours}. */
  String id();

  /** Facts without which it is skipped (ONE) or after whose givers it runs (MANY). */
  default Set<FactKey<?>> needs() {
    return Set.of();
  }

  /** Facts it reads when they are there. */
  default Set<FactKey<?>> wants() {
    return Set.of();
  }

  /** Facts it may give. */
  Set<FactKey<?>> gives();

  /**
   * Calculates.
   *
   * @throws yardloom.kernel.problem.PlanException if the plan's data make it impossible
   */
  void compute(Plan plan, Facts in, Sink out);
}
