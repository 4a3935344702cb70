package yardloom.program.cli;

import yardloom.kernel.plan.Plan;
import yardloom.sheet.paper.Paper;

/** The paper that a command line asks for. */
final class Papers {
  private Papers() {}

  /**
   * The paper of that name; without a name what is usual in the plan's units.
   *
   * @throws yardloom.kernel.problem.PlanException if there is no such paper
   */
  static Paper of(String name, Plan plan) {
    return name == null ? Paper.usual(plan.info().units()) : Paper.named(name);
  }
}
