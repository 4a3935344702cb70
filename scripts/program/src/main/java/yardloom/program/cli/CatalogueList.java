package yardloom.program.cli;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.spi.Catalogue;

/** Prints the rows of a catalogue that say what is asked for. */
final class CatalogueList {
  private final Console console;

  CatalogueList(Console console) {
    this.console = console;
  }

  /** Exit code USE if a trait is not one of the catalogue, or is asked for without a text. */
  int print(Catalogue catalogue, List<String> asked) {
    TreeSet<String> traits = new TreeSet<>();
    catalogue.rows().forEach(row -> traits.addAll(row.traits().keySet()));
    for (String each : asked) {
      String trait = each.split(":", 2)[0];
      if (isNamed(catalogue, each)) {
        continue;
      }
      if (!each.contains(":") || !traits.contains(trait)) {
        console.complain(
            "ask "
                + catalogue.name()
                + " by TRAIT:TEXT or a part of a name, got `"
                + each
                + "`; traits are "
                + String.join(", ", traits)
                + "."
                + Nearest.hint(trait, traits)
                + " [UNKNOWN_WORD]");
        return ExitCode.USE;
      }
    }
    List<Catalogue.Row> found =
        catalogue.rows().stream()
            .filter(row -> asked.stream().allMatch(a -> says(row, a)))
            .toList();
    console.say(catalogue.title() + ": " + found.size() + " of " + catalogue.rows().size());
    for (Catalogue.Row row : found) {
      String said =
          row.traits().entrySet().stream()
              .filter(t -> !t.getValue().isEmpty())
              .map(t -> t.getKey() + " " + t.getValue())
              .collect(Collectors.joining("; "));
      Wrapped.of(String.format("  %-22s %s", row.name(), said), 25).forEach(console::say);
    }
    return ExitCode.FINE;
  }

  /** Without a colon, the name of a row, or a part of one. */
  private static boolean isNamed(Catalogue catalogue, String ask) {
    return !ask.contains(":") && catalogue.rows().stream().anyMatch(row -> says(row, ask));
  }

  private static boolean says(Catalogue.Row row, String ask) {
    String[] parts = ask.split(":", 2);
    return parts.length == 2
        ? row.has(parts[0], parts[1].trim())
        : row.name().toLowerCase(Locale.ROOT).contains(ask.trim().toLowerCase(Locale.ROOT));
  }
}
