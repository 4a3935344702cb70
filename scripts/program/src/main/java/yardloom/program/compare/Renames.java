package yardloom.program.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Old tables with the new names of elements, so that a rename alone is no other quantity. */
final class Renames {
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");

  private Renames() {}

  /** {@code tables} with the names that {@code changes} give. */
  static List<ResultGrid> in(List<ResultGrid> tables, List<ThingChange> changes) {
    Map<String, String> names = new LinkedHashMap<>();
    for (ThingChange change : changes) {
      if (change.how() == ThingChange.How.RENAMED) {
        names.put(change.old().orElseThrow().name(), change.thing().name());
      }
    }
    return names.isEmpty() ? tables : tables.stream().map(t -> in(t, names)).toList();
  }

  private static ResultGrid in(ResultGrid table, Map<String, String> names) {
    return new ResultGrid(
        table.id(),
        table.title(),
        table.columns(),
        in(table.naming(), names),
        in(table.cells(), names));
  }

  private static List<List<String>> in(List<List<String>> rows, Map<String, String> names) {
    return rows.stream().map(r -> r.stream().map(c -> in(c, names)).toList()).toList();
  }

  /** A cell that is the name, or holds it in quotation marks as element names stand in texts. */
  private static String in(String cell, Map<String, String> names) {
    String bare = names.get(cell);
    if (bare != null) {
      return bare;
    }
    return QUOTED
        .matcher(cell)
        .replaceAll(
            q -> Matcher.quoteReplacement('"' + names.getOrDefault(q.group(1), q.group(1)) + '"'));
  }
}
