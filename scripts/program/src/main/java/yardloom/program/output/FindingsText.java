package yardloom.program.output;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.vocab.Choices;

/** Findings as text, for the console and {@code findings.txt}. */
public final class FindingsText {
  private FindingsText() {}

  /** How many there are of each severity, in one line. */
  public static String summary(List<Finding> findings) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = findings.stream().filter(f -> f.severity() == severity).count();
      if (count > 0) {
        parts.add(count + " " + Choices.text(severity) + (count == 1 ? "" : "s"));
      }
    }
    return parts.isEmpty() ? "no findings" : String.join(", ", parts);
  }

  /**
   * One block of lines for each finding under its number on the sheets, or one sentence if there
   * are none.
   */
  public static String of(List<Finding> findings) {
    if (findings.isEmpty()) {
      return "No findings.\n";
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < findings.size(); i++) {
      Finding f = findings.get(i);
      String where = f.place().line() == 0 ? "" : f.place() + ": ";
      String about = f.element().map(id -> id + ": ").orElse("");
      text.append('(')
          .append(i + 1)
          .append(") ")
          .append(f.severity())
          .append("  ")
          .append(where)
          .append(about)
          .append(f.text())
          .append(" [")
          .append(f.rule())
          .append("]\n");
      if (!f.advice().isBlank()) {
        text.append("    do: ").append(f.advice()).append('\n');
      }
      text.append("    by: ").append(f.source().cite()).append('\n');
    }
    return text.toString();
  }
}
