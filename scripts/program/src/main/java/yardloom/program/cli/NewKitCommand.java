package yardloom.program.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import yardloom.program.starter.NewFiles;

/** Writes what one begins with who adds to the program: a plugin's project or a regional file. */
@Command
final class NewKitCommand implements Callable<Integer> {
  private final Console console;
  private final Path base;
  private final boolean plugin;

  @Parameters(
      arity = "1",
      paramLabel = "NAME",
      description = "Lower-case letters and digits, parts joined by hyphens, such as county-soil.")
  private String name;

  @Mixin private HelpOption help;

  private NewKitCommand(Console console, Path base, boolean plugin) {
    this.console = console;
    this.base = base;
    this.plugin = plugin;
  }

  static NewKitCommand plugin(Console console, Path base) {
    return new NewKitCommand(console, base, true);
  }

  static NewKitCommand regional(Console console, Path base) {
    return new NewKitCommand(console, base, false);
  }

  /** Classes that are not packed do not know their version; then it is the one of this source. */
  private static String version() {
    String version = Version.text();
    return version.startsWith("(") ? "0.1.0" : version;
  }

  @Override
  public Integer call() {
    if (!name.matches("[a-z][a-z0-9]*(-[a-z][a-z0-9]*)*")) {
      console.complain(
          "a "
              + (plugin ? "plugin" : "region")
              + " is called by lower-case letters and digits, parts joined by hyphens, such as"
              + " county-soil; got "
              + name
              + " [USE]");
      return ExitCode.USE;
    }
    Map<String, String> files = new TreeMap<>();
    if (plugin) {
      NewFiles.plugin(name, version()).forEach((path, text) -> files.put(name + "/" + path, text));
    } else {
      files.put(name + ".groovy", NewFiles.regional(name));
    }
    if (plugin && Files.exists(base.resolve(name))) {
      console.complain(
          "there is " + name + " already and it stays as it is; give another NAME [USE]");
      return ExitCode.USE;
    }
    files.forEach((path, text) -> NewCommand.write(base.resolve(path), Path.of(path), text));
    console.say(
        plugin
            ? name + ": a plugin's project. Read " + name + "/README.md and follow it."
            : name
                + ".groovy: a regional file. Replace its soils and rates; plans take it with:"
                + " include '"
                + name
                + "'");
    return ExitCode.FINE;
  }
}
