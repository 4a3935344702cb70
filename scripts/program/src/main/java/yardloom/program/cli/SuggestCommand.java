package yardloom.program.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/** Prints the plants that suit a bed together: what the table of that word says of the bed. */
@Command(
    name = "suggest",
    description =
        "Print sets of plants that suit a bed together, for the wishes of its word `suggest`.",
    footer = {"", "Example:", "  yardloom suggest yard.groovy \"kitchen bed\""})
final class SuggestCommand implements Callable<Integer> {
  /** The table whose first column names beds; that of the word {@code suggest}. */
  private static final String TABLE = "suggestions";

  private static final int INDENT = 4;

  @ParentCommand private Main main;

  private final Console console;
  private final Path base;

  @Mixin private PlanArgument argument;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "BED",
      description = "The name of a bed; without it all beds that ask for plants.")
  private List<String> bed = List.of();

  SuggestCommand(Console console, Path base) {
    this.console = console;
    this.base = base;
  }

  @Override
  public Integer call() {
    Outcome outcome = argument.study(main.toolkit(), base);
    String asked = String.join(" ", bed).strip();
    Optional<Table> table = outcome.tables().stream().filter(t -> t.id().equals(TABLE)).findFirst();
    TreeSet<String> known = new TreeSet<>();
    table.ifPresent(t -> t.rows().forEach(r -> known.add(text(r.get(0)))));
    if (known.isEmpty() || !asked.isEmpty() && !known.contains(asked)) {
      console.complain(
          (asked.isEmpty() ? "No bed of this plan asks" : "The bed '" + asked + "' does not ask")
              + " for plants, or no set of them suits it; write `suggest harvest: 'May to October'`"
              + " in its block."
              + Nearest.hint(asked, known));
      return ExitCode.PLAN;
    }
    TableFormat format = TableFormat.of(outcome.plan().info());
    print(table.orElseThrow(), asked, format);
    return ExitCode.FINE;
  }

  private void print(Table table, String asked, TableFormat format) {
    List<Column> columns = table.columns();
    String last = "";
    for (List<Cell> row : table.rows()) {
      String in = text(row.get(0));
      if (!asked.isEmpty() && !in.equals(asked)) {
        continue;
      }
      String set =
          in
              + ", "
              + columns.get(1).title().toLowerCase(java.util.Locale.ROOT)
              + " "
              + text(row.get(1));
      if (!set.equals(last)) {
        console.say(set);
        last = set;
      }
      List<String> said = new ArrayList<>();
      for (int i = 3; i < columns.size(); i++) {
        if (row.get(i).value().isPresent()) {
          said.add(columns.get(i).title() + " " + format.plain(columns.get(i), row.get(i)));
        }
      }
      Wrapped.of("  " + text(row.get(2)) + ": " + String.join("; ", said), INDENT)
          .forEach(console::say);
    }
    table.notes().stream().flatMap(n -> Wrapped.of(n, INDENT).stream()).forEach(console::say);
  }

  private static String text(Cell cell) {
    return cell.value().map(Object::toString).orElse("");
  }
}
