package yardloom.program.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** The one plan that a command works on; what else it takes stands behind it. */
final class PlanArgument extends PlanOptions {
  @Parameters(index = "0", paramLabel = "PLAN", description = "The plan script.")
  private Path plan;

  Path plan() {
    return plan;
  }
}
