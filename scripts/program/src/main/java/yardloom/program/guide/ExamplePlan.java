package yardloom.program.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;

/**
 * A word's example as a plan that runs: behind a usual beginning, inside the block that the word
 * stands in, after what it speaks of.
 */
final class ExamplePlan {
  /** The beginning, and what stands before and after a word in its block; lines parted by |. */
  private static final DataTable FRAMES = DataTable.shipped(ExamplePlan.class, "frames.csv");

  /** What single words ask for: a line before them left out, lines before, another example. */
  private static final DataTable NEEDS = DataTable.shipped(ExamplePlan.class, "needs.csv");

  private ExamplePlan() {}

  static String of(Word word) {
    return of(word, true);
  }

  /** The same plan with or without what the word says, so that one sees what it draws. */
  static String of(Word word, boolean isSpoken) {
    String scope = scope(word);
    Optional<DataRow> needs =
        NEEDS.rows().stream()
            .filter(r -> r.text("word").equals(word.name()) && r.text("in").equals(scope))
            .findFirst();
    Optional<DataRow> frame =
        FRAMES.rows().stream().filter(r -> r.text("in").equals(scope)).findFirst();
    List<String> lines = new ArrayList<>();
    String without = needs.map(r -> r.text("without")).orElse("");
    for (String line : lines(FRAMES.row("in", "beginning"), "before")) {
      String begins = begins(line);
      if (!begins.equals(word.name()) && !begins.equals(without)) {
        lines.add(line);
      }
    }
    needs.ifPresent(r -> lines.addAll(lines(r, "first")));
    frame.ifPresent(
        f ->
            lines(f, "before").stream()
                // The block itself has to stay; what it holds may make way for the word.
                .filter(line -> !line.startsWith("  ") || !begins(line).equals(without))
                .forEach(lines::add));
    String example =
        needs.map(r -> r.text("example")).filter(e -> !e.isEmpty()).orElse(word.example());
    boolean value = scope.isEmpty() && needs.isEmpty();
    String indent = frame.isPresent() ? "  " : "";
    if (isSpoken) {
      lines.add(value ? "def example = " + example : indent + example.replace("|", "\n"));
    }
    frame.ifPresent(f -> lines.addAll(lines(f, "after")));
    return String.join("\n", lines) + "\n";
  }

  /** The block of a word; nothing for one that stands in every block and makes a value. */
  static String scope(Word word) {
    return word.scope() == Scope.class ? "" : Scope.nameOf(word.scope());
  }

  private static String begins(String line) {
    return line.strip().split("[ (]", 2)[0];
  }

  private static List<String> lines(DataRow row, String column) {
    String text = row.text(column);
    return text.isEmpty() ? List.of() : List.of(text.split("\\|"));
  }
}
