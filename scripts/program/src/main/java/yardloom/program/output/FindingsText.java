package yardloom.program.output;

import java.util.List;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.study.FindingGroup;
import yardloom.kernel.unit.OwnMeasures;
import yardloom.kernel.unit.UnitSystem;

/** Findings as text, for the console and {@code findings.txt}. */
public final class FindingsText {
  private FindingsText() {}

  /** How many there are of each severity, in one line. */
  public static String summary(List<Finding> findings) {
    String counts = FindingGroup.counts(findings);
    return counts.isEmpty() ? "no findings" : counts;
  }

  /**
   * One block of lines for each group of findings under its number on the sheets, or one sentence
   * if there are none; what is said in both systems is said in {@code units}.
   */
  public static String of(List<Finding> findings, UnitSystem units) {
    if (findings.isEmpty()) {
      return "No findings.\n";
    }
    StringBuilder text = new StringBuilder();
    FindingGroup.of(findings).forEach(group -> group(group, text));
    return OwnMeasures.of(text.toString(), units);
  }

  private static void group(FindingGroup group, StringBuilder text) {
    Finding f = group.first();
    text.append('(').append(group.number()).append(") ").append(f.severity()).append("  ");
    text.append(where(f)).append(f.text()).append(" [").append(f.rule()).append("]\n");
    for (Finding also : group.all().subList(1, group.all().size())) {
      text.append("    also: ").append(where(also).replaceFirst(": $", "")).append('\n');
    }
    if (f.severity() == Severity.ACCEPTED) {
      text.append("    ").append(f.advice()).append('\n');
    } else if (!f.advice().isBlank()) {
      text.append("    do: ").append(f.advice()).append('\n');
    }
    text.append("    by: ").append(f.source().cite()).append('\n');
  }

  private static String where(Finding f) {
    String place = f.place().line() == 0 ? "" : f.place().before();
    return place + f.element().map(id -> id + ": ").orElse("");
  }
}
