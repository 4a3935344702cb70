package yardloom.program.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A name for each row of a table that no other row has: its first cell, and where that is not
 * enough the next cells that say something, and at last a number.
 */
public final class RowNames {
  private static final Pattern BLANKS = Pattern.compile("\\s+");

  private RowNames() {}

  /**
   * The names, row by row; letter case and quotation marks tell no two rows apart.
   *
   * @param rows what each cell says that may name a row; empty for cells that may not
   */
  public static List<String> of(List<List<String>> rows) {
    List<String> names = new ArrayList<>();
    List<Integer> used = new ArrayList<>();
    for (List<String> row : rows) {
      int first = next(row, 0);
      names.add(first < 0 ? "row" : plain(row.get(first)));
      used.add(first < 0 ? row.size() : first + 1);
    }
    boolean longer = true;
    while (longer) {
      longer = false;
      Map<String, Integer> count = counts(names);
      for (int i = 0; i < rows.size(); i++) {
        int next = next(rows.get(i), used.get(i));
        if (count.get(key(names.get(i))) > 1 && next >= 0) {
          names.set(i, names.get(i) + ", " + plain(rows.get(i).get(next)));
          used.set(i, next + 1);
          longer = true;
        }
      }
    }
    return numbered(names);
  }

  /**
   * The names of the rows of two tables of one kind, so that a row has one name in both: as few
   * cells of each row as tell all rows apart in either table.
   */
  public static List<List<String>> ofBoth(List<List<String>> one, List<List<String>> other) {
    int most = Stream.concat(one.stream(), other.stream()).mapToInt(List::size).max().orElse(0);
    int cells = 1;
    while (cells < most && !(tellApart(one, cells) && tellApart(other, cells))) {
      cells++;
    }
    int used = cells;
    return Stream.of(one, other).map(t -> numbered(beginnings(t, used))).toList();
  }

  private static boolean tellApart(List<List<String>> rows, int cells) {
    return counts(beginnings(rows, cells)).size() == rows.size();
  }

  private static List<String> beginnings(List<List<String>> rows, int cells) {
    return rows.stream()
        .map(
            row ->
                row.stream()
                    .filter(t -> !t.isBlank())
                    .limit(cells)
                    .map(RowNames::plain)
                    .collect(Collectors.joining(", ")))
        .toList();
  }

  private static List<String> numbered(List<String> names) {
    Map<String, Integer> count = counts(names);
    Set<String> taken = new HashSet<>(count.keySet());
    List<String> numbered = new ArrayList<>();
    for (String name : names) {
      String free = name;
      // A cell may end in a number sign itself.
      for (int i = 1; count.get(key(name)) > 1 && !taken.add(key(free)); i++) {
        free = name + " #" + i;
      }
      numbered.add(free);
    }
    return numbered;
  }

  private static Map<String, Integer> counts(List<String> names) {
    Map<String, Integer> count = new HashMap<>();
    names.forEach(n -> count.merge(key(n), 1, Integer::sum));
    return count;
  }

  private static int next(List<String> row, int from) {
    for (int i = from; i < row.size(); i++) {
      if (!row.get(i).isBlank()) {
        return i;
      }
    }
    return -1;
  }

  /** Without quotation marks, so that it can be typed between them. */
  private static String plain(String text) {
    return text.replace("\"", "").replace('\u00a0', ' ').strip();
  }

  /** What a typed name is looked up by. */
  public static String key(String name) {
    return BLANKS.matcher(plain(name).toLowerCase(Locale.ROOT)).replaceAll(" ");
  }
}
