package yardloom.program.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;
import yardloom.kernel.study.Outcome;

/** The one plan that a command works on; what else it takes stands behind it. */
final class PlanArgument extends PlanOptions {
  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan script.")
  private Path plan;

  Path plan() {
    return plan;
  }

  /** All that follows from the plan with the values given to its parameters. */
  Outcome study(Toolkit toolkit, Path base) {
    return toolkit.study(toolkit.read(base.resolve(plan), settings()));
  }
}
