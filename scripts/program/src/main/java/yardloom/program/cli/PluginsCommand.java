package yardloom.program.cli;

import java.net.URL;
import java.nio.file.Path;
import java.util.Collection;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.spi.YardPlugin;

/** Lists the loaded plugins. */
@Command(
    name = "plugins",
    description = "List the loaded plugins and what each contributes.",
    footer = {"", "Example:", "  yardloom plugins --verbose"})
final class PluginsCommand implements Callable<Integer> {
  private final Console console;

  @Option(names = "--verbose", description = "One line for every contribution.")
  private boolean verbose;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Print this help.")
  private boolean help;

  PluginsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Toolkit toolkit = Toolkit.load();
    for (YardPlugin plugin : toolkit.plugins().all()) {
      console.say(
          plugin.info().id()
              + " "
              + plugin.info().version()
              + "  "
              + plugin.info().title()
              + " (from "
              + from(plugin)
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
