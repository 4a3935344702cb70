package yardloom.program.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The plans that a command works on. */
final class PlanArguments {
  @Parameters(arity = "1..*", paramLabel = "PLAN", description = "Plan scripts, or plans as JSON.")
  private List<Path> plans;

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "Give a parameter of the plan another value, such as --set bedWidth=3.5ft.")
  private List<String> settings = List.of();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this help.")
  private boolean help;

  List<Path> plans() {
    return plans;
  }

  /**
   * The values given for parameters, by name.
   *
   * @throws ParameterException if one is not of the form NAME=VALUE or is given twice
   */
  Map<String, String> settings() {
    return Settings.of(command, "--set", settings);
  }
}
