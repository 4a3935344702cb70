package yardloom.program.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/**
 * Helps an editor while a plan is written.
 *
 * <p>Every start makes all commands, so nothing here may name the protocol's classes: they are read
 * only when an editor is served.
 */
@Command(
    name = "editor",
    description = {
      "Help an editor while a plan is written: completion, help under the pointer, problems and"
          + " findings where they stand. Editors start it themselves and speak the Language Server"
          + " Protocol with it over standard input and output."
    },
    footer = {
      "",
      "Example, as an editor's settings have the command of a language server:",
      "  yardloom editor --plugins my-plugins"
    })
final class EditorCommand implements Callable<Integer> {
  @ParentCommand private Main main;

  private final Console console;

  @Mixin private HelpOption help;

  EditorCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    return EditorSession.run(console, main.toolkit());
  }
}
