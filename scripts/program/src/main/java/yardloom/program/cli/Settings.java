package yardloom.program.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Values for parameters of a plan, as options give them. */
final class Settings {
  private Settings() {}

  /**
   * The values by name.
   *
   * @param option the option that gives them, for messages
   * @throws ParameterException if one is not of the form NAME=VALUE or is given twice
   */
  static Map<String, String> of(CommandSpec command, String option, List<String> settings) {
    Map<String, String> values = new LinkedHashMap<>();
    for (String setting : settings) {
      int equals = setting.indexOf('=');
      if (equals < 1) {
        throw new ParameterException(
            command.commandLine(),
            option + " needs NAME=VALUE, such as bedWidth=3.5ft; got " + setting);
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
