package yardloom.program.cli;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How plans are read, whether a command takes one or several. */
abstract class PlanOptions {
  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description = "Give a parameter of the plan another value, such as --set bedWidth=3.5ft.")
  private List<String> settings = List.of();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Mixin private HelpOption help;

  /**
   * The values given for parameters, by name.
   *
   * @throws ParameterException if one is not of the form NAME=VALUE or is given twice
   */
  final Map<String, String> settings() {
    return Settings.of(command, "--set", settings);
  }
}
