package yardloom.program.cli;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import yardloom.kernel.spi.YardPlugin;

/** Which plugins a command works with; every command knows these options. */
final class PluginOptions {
  private final Path base;
  private final Console console;

  @Option(
      names = "--plugins",
      paramLabel = "DIR",
      scope = ScopeType.INHERIT,
      description =
          "Also load the plugin jars of a folder, beside those of ~/.yardloom/plugins. A plugin is"
              + " a program: load only what you trust.")
  private List<Path> folders = List.of();

  @Option(
      names = "--without",
      paramLabel = "ID",
      scope = ScopeType.INHERIT,
      description = "Leave a plugin out.")
  private List<String> without = List.of();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  private final Supplier<Toolkit> shipped;

  private Toolkit toolkit;

  /**
   * @param shipped the program's own plugins, if no others are asked for
   */
  PluginOptions(Console console, Path base, Supplier<Toolkit> shipped) {
    this.console = console;
    this.base = base;
    this.shipped = shipped;
  }

  /**
   * The plugins, loaded once for a command; those from outside are announced then, since they may
   * change any figure.
   *
   * @throws ParameterException if a folder that is named is not there
   */
  Toolkit toolkit() {
    if (toolkit == null) {
      toolkit = load();
    }
    return toolkit;
  }

  /**
   * The choice among the program's own plugins as text; empty if there may be others, whose code
   * and data nobody here knows.
   */
  Optional<String> own() {
    return folders.isEmpty() && standing().stream().noneMatch(Files::isDirectory)
        ? Optional.of("without " + new TreeSet<>(without))
        : Optional.empty();
  }

  /** Where plugins from outside lie without being named. */
  private static List<Path> standing() {
    List<Path> all = new ArrayList<>();
    besideTheProgram().ifPresent(all::add);
    String home = System.getProperty("user.home");
    if (home != null && !home.isBlank()) {
      all.add(Path.of(home, ".yardloom", "plugins"));
    }
    return all;
  }

  private Toolkit load() {
    if (without.isEmpty() && own().isPresent()) {
      return shipped.get();
    }
    List<Path> all = standing();
    for (Path folder : folders) {
      if (!Files.isDirectory(base.resolve(folder))) {
        throw new ParameterException(
            command.commandLine(),
            "--plugins needs a folder with jars; there is none at " + folder);
      }
      all.add(base.resolve(folder));
    }
    Toolkit loaded = Toolkit.load(all.stream().distinct().toList(), new TreeSet<>(without));
    for (YardPlugin plugin : loaded.plugins().all()) {
      loaded
          .jarOf(plugin)
          .ifPresent(
              jar ->
                  console.complain(
                      "with the plugin "
                          + plugin.info().id()
                          + " "
                          + plugin.info().version()
                          + " from "
                          + jar));
    }
    return loaded;
  }

  /** {@code plugins} beside the {@code lib} that the program's own jars are in. */
  private static Optional<Path> besideTheProgram() {
    CodeSource source = PluginOptions.class.getProtectionDomain().getCodeSource();
    if (source == null) {
      return Optional.empty();
    }
    try {
      Path lib = Path.of(source.getLocation().toURI()).getParent();
      return lib != null && lib.endsWith("lib")
          ? Optional.of(lib.resolveSibling("plugins"))
          : Optional.empty();
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }
}
