package yardloom.program.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The plans that a command works on. */
final class PlanArguments {
  @Parameters(arity = "1..*", paramLabel = "PLAN", description = "Plan scripts.")
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
    Map<String, String> values = new LinkedHashMap<>();
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      if (equals < 1) {
        throw new ParameterException(
            command.commandLine(),
            "--set needs NAME=VALUE, such as bedWidth=3.5ft; got " + setting);
      }
      String name = setting.substring(0, equals);
      String value = setting.substring(equals + 1);
      String earlier = values.put(name, value);
      if (earlier != null) {
        throw new ParameterException(
            command.commandLine(),
            name + " is set twice, to " + earlier + " and to " + value + "; give it once");
      }
    }
    return values;
  }
}
