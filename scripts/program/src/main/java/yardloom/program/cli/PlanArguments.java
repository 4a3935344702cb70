package yardloom.program.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Parameters;

/** The plans that a command works on. */
final class PlanArguments extends PlanOptions {
  @Parameters(arity = "1..*", paramLabel = "PLAN", description = "Plan scripts, or plans as JSON.")
  private List<Path> plans;

  List<Path> plans() {
    return plans;
  }
}
