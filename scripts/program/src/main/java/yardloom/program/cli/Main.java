package yardloom.program.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import yardloom.kernel.problem.PlanException;
import yardloom.program.cache.KeptDrawings;
import yardloom.program.cache.ProcessCache;

/** The {@code yardloom} command. */
@Command(
    name = "yardloom",
    description = "Draws yard plans from scripts: sheets to scale, quantities, findings.",
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Exit codes: 0 fine; 1 some finding is an error; 2 the plan is wrong; 3 wrong use;"
          + " 4 a fault of the program.",
      "Plans as compiled and as drawn are kept in your cache folder, so that what did not change is"
          + " only written again; with YARDLOOM_CACHE=off nothing is kept."
    })
public final class Main implements Callable<Integer> {
  /** Commands that read a plan. */
  private static final Set<String> READERS =
      Set.of("check", "compare", "convert", "draw", "explain", "suggest");

  private final Console console;

  @Mixin private HelpOption help;

  @Option(
      names = {"--version"},
      versionHelp = true,
      description = "Print the version.")
  private boolean version;

  @CommandLine.Mixin private final PluginOptions plugins;

  @CommandLine.Spec private CommandLine.Model.CommandSpec spec;

  private Main(Console console, Path base, Supplier<Toolkit> begun) {
    this.console = console;
    this.plugins = new PluginOptions(console, base, begun);
  }

  /** The plugins that the options ask for. */
  Toolkit toolkit() {
    return plugins.toolkit();
  }

  /** Which plugins the options ask for; empty if some may come from outside. */
  Optional<String> ownPlugins() {
    return plugins.own();
  }

  /** Runs the command line and ends the process with its exit code. */
  public static void main(String[] args) {
    // The library of the command line loads Groovy's runtime, a tenth of a cold draw.
    Supplier<Toolkit> begun =
        args.length > 0 && READERS.contains(args[0]) ? Toolkit.begin()::get : Toolkit::load;
    int code =
        run(
            Console.ofProcess(),
            Path.of(""),
            () -> ProcessCache.ofThisProcess().drawings(),
            begun,
            args);
    // A script thread that ran out of its limits may still be alive; it must not keep the process.
    Runtime.getRuntime().halt(code);
  }

  /** Runs the command line; relative paths are resolved against {@code base}. */
  static int run(Console console, Path base, String... args) {
    return run(console, base, () -> ProcessCache.ofThisProcess().drawings(), args);
  }

  /** The same with another memory of what was drawn before. */
  static int run(Console console, Path base, Supplier<KeptDrawings> kept, String... args) {
    return run(console, base, kept, Toolkit::load, args);
  }

  private static int run(
      Console console,
      Path base,
      Supplier<KeptDrawings> kept,
      Supplier<Toolkit> begun,
      String... args) {
    CommandLine line =
        new CommandLine(new Main(console, base, begun))
            .addSubcommand(new DrawCommand(console, base, kept))
            .addSubcommand(new CheckCommand(console, base))
            .addSubcommand(
                new CommandLine(new NewCommand(console, base))
                    .addSubcommand("plugin", NewKitCommand.plugin(console, base))
                    .addSubcommand("regional", NewKitCommand.regional(console, base)))
            .addSubcommand(new ExplainCommand(console, base))
            .addSubcommand(new SuggestCommand(console, base))
            .addSubcommand(new CompareCommand(console, base))
            .addSubcommand(new ConvertCommand(console, base))
            .addSubcommand(new BatchCommand(console, base))
            .addSubcommand(new WatchCommand(console, base))
            .addSubcommand(new EditorCommand(console))
            .addSubcommand(new WordsCommand(console))
            .addSubcommand(new PluginsCommand(console))
            .setOut(console.outWriter())
            .setErr(console.errWriter())
            .setCaseInsensitiveEnumValuesAllowed(true)
            .registerConverter(Path.class, Main::path)
            .setParameterExceptionHandler(
                (e, a) -> {
                  console.complain(e.getMessage().replace("option option", "option"));
                  console.complain(
                      "Run `yardloom "
                          + (e.getCommandLine().getParent() == null
                              ? ""
                              : e.getCommandLine().getCommandName() + " ")
                          + "--help` for what is allowed. [USE]");
                  return ExitCode.USE;
                })
            .setExecutionExceptionHandler(
                (e, c, p) ->
                    e instanceof PlanException plan ? console.problems(plan) : console.fault(e));
    line.getCommandSpec().version("yardloom " + Version.text());
    try {
      return line.execute(args);
    } catch (RuntimeException | Error e) {
      return console.fault(e);
    }
  }

  private static Path path(String text) {
    if (text.isBlank()) {
      throw new TypeConversionException("a file or folder needs a name; got nothing");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new TypeConversionException("this cannot be the name of a file: " + e.getReason());
    }
  }

  @Override
  public Integer call() {
    console.complain("Say what to do, such as `yardloom draw plan.groovy`. [USE]");
    console.complain(spec.commandLine().getUsageMessage());
    return ExitCode.USE;
  }
}
