package yardloom.program.cli;

import java.net.URL;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.spi.YardPlugin;

/** Lists the loaded plugins. */
@Command(
    name = "plugins",
    description = "List the loaded plugins and what each contributes.",
    footer = {"", "Example:", "  yardloom plugins --verbose"})
final class PluginsCommand implements Callable<Integer> {
  @ParentCommand private Main main;

  private final Console console;

  @Option(names = "--verbose", description = "One line for every contribution.")
  private boolean verbose;

  @Mixin private HelpOption help;

  PluginsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Toolkit toolkit = main.toolkit();
    for (YardPlugin plugin : toolkit.plugins().all()) {
      console.say(
          plugin.info().id()
              + " "
              + plugin.info().version()
              + "  "
              + plugin.info().title()
              + " (from "
              + toolkit.jarOf(plugin).map(Path::toString).orElseGet(() -> from(plugin))
              + ", level "
              + plugin.spiLevel()
              + ": "
              + offers(toolkit, plugin)
              + ")");
      if (verbose) {
        contributions(toolkit, plugin);
      }
    }
    if (verbose) {
      console.say("calculators run in this order:");
      toolkit.plugins().graph().order().forEach(c -> console.say("  " + c.id()));
    }
    return ExitCode.FINE;
  }

  /** How many of what it offers, in one line. */
  private static String offers(Toolkit toolkit, YardPlugin plugin) {
    long words =
        toolkit.plugins().lexicon().all().stream()
            .filter(w -> w.plugin().equals(plugin.info().id()))
            .count();
    List<String> parts = new ArrayList<>();
    count(parts, words, "word");
    count(parts, plugin.calculators().size(), "calculator");
    count(parts, plugin.checks().size(), "check");
    count(parts, plugin.painters().size(), "layer");
    count(parts, plugin.tables().size(), "table");
    count(parts, plugin.sheets().size(), "sheet");
    return parts.isEmpty() ? "nothing" : String.join(", ", parts);
  }

  private static void count(List<String> parts, long number, String what) {
    if (number > 0) {
      parts.add(number + " " + what + (number == 1 ? "" : "s"));
    }
  }

  private void contributions(Toolkit toolkit, YardPlugin plugin) {
    toolkit.plugins().lexicon().all().stream()
        .filter(w -> w.plugin().equals(plugin.info().id()))
        .forEach(w -> console.say("  word       " + w.signature()));
    plugin
        .calculators()
        .forEach(
            c ->
                console.say(
                    "  calculator "
                        + c.id()
                        + keys(" needs ", c.needs())
                        + keys(" gives ", c.gives())));
    plugin.checks().forEach(c -> console.say("  check      " + c.id()));
    plugin.painters().forEach(p -> console.say("  layer      " + p.layer().id()));
    plugin.tables().forEach(t -> console.say("  table      " + t.id()));
    plugin.sheets().forEach(s -> console.say("  sheet      " + s.id()));
  }

  private static String keys(String verb, Collection<FactKey<?>> keys) {
    String ids = keys.stream().map(FactKey::id).sorted().collect(Collectors.joining(", "));
    return ids.isEmpty() ? "" : verb + ids;
  }

  private static String from(YardPlugin plugin) {
    URL url = plugin.getClass().getProtectionDomain().getCodeSource().getLocation();
    Path file = Path.of(url.getPath());
    return file.getFileName().toString();
  }
}
