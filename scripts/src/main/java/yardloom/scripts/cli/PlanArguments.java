package yardloom.scripts.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The plans that a command works on. */
final class PlanArguments {
  @Parameters(arity = "1..*", paramLabel = "PLAN", description = "Plan scripts.")
  private List<Path> plans;

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "Give a parameter of the plan another value, such as --set bedWidth=3.5ft.")
  private Map<String, String> settings = new LinkedHashMap<>();

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this help.")
  private boolean help;

  List<Path> plans() {
    return plans;
  }

  Map<String, String> settings() {
    return settings;
  }
}
