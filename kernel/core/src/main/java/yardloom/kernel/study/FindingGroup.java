package yardloom.kernel.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.vocab.Choices;

/**
 * Findings that say one thing of many places, under one number.
 *
 * @param number counts from 1 in the order of the findings
 * @param all at least one, in their order; rule, severity, text and advice are the same
 */
public record FindingGroup(int number, List<Finding> all) {
  /** More elements are counted, not named, where there is little room. */
  private static final int NAMED = 6;

  public FindingGroup {
    all = List.copyOf(all);
  }

  /** The groups of sorted findings, each where its first one stood. */
  public static List<FindingGroup> of(List<Finding> findings) {
    Map<List<Object>, List<Finding>> same = new LinkedHashMap<>();
    for (Finding f : findings) {
      List<Object> key = List.of(f.severity(), f.rule(), f.text(), f.advice(), f.source());
      same.computeIfAbsent(key, k -> new ArrayList<>()).add(f);
    }
    List<FindingGroup> groups = new ArrayList<>();
    same.values().forEach(all -> groups.add(new FindingGroup(groups.size() + 1, all)));
    return groups;
  }

  /** How many findings there are of each severity, in words; empty if there are none. */
  public static String counts(List<Finding> findings) {
    List<String> parts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = findings.stream().filter(f -> f.severity() == severity).count();
      if (count > 0) {
        boolean one = count == 1 || severity == Severity.ACCEPTED;
        parts.add(count + " " + Choices.text(severity) + (one ? "" : "s"));
      }
    }
    return String.join(", ", parts);
  }

  /** The first of them, which has what all say. */
  public Finding first() {
    return all.get(0);
  }

  /** What they are about, such as {@code bed "a", bed "b": }; empty if about no element. */
  public String about() {
    List<String> names =
        all.stream().flatMap(f -> f.element().stream()).map(Object::toString).distinct().toList();
    if (names.isEmpty()) {
      return "";
    }
    String shown = names.stream().limit(NAMED).collect(Collectors.joining(", "));
    int more = names.size() - NAMED;
    return shown + (more > 0 ? " and " + more + " more" : "") + ": ";
  }
}
