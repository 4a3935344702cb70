package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/**
 * A table as a sheet prints it; data files keep the whole one.
 *
 * <ul>
 *   <li>Columns without any entry are left out.
 *   <li>Sources that stand in several rows become numbered notes.
 *   <li>Rows that read alike but for the number at the end of their name become one, such as {@code
 *       kitchen 1 to 6, each}.
 * </ul>
 *
 * <p>Totals and the order of first rows stay as they are, and so do rows under headings.
 */
final class SheetTable {
  private static final Pattern NUMBERED = Pattern.compile("(.*\\D)(\\d{1,4})(\"?)");
  private static final String SOURCE_COLUMN = "source";

  private SheetTable() {}

  static Table of(Table table, TableFormat format) {
    return grouped(numberedSources(withoutBlankColumns(table)), format);
  }

  private static Table withoutBlankColumns(Table table) {
    List<Integer> kept =
        IntStream.range(0, table.columns().size())
            .filter(i -> i == 0 || table.rows().stream().anyMatch(r -> isFilled(r.get(i))))
            .boxed()
            .toList();
    return with(
        table,
        kept.stream().map(table.columns()::get).toList(),
        table.rows().stream().map(r -> kept.stream().map(r::get).toList()).toList(),
        table.notes());
  }

  private static boolean isFilled(Cell cell) {
    return cell.value().filter(v -> !v.toString().isBlank()).isPresent();
  }

  private static Table numberedSources(Table table) {
    List<String> ids = table.columns().stream().map(Column::id).toList();
    int at = ids.indexOf(SOURCE_COLUMN);
    if (at < 1 || table.totals() > 0) {
      return table;
    }
    List<String> texts =
        table.rows().stream().map(r -> r.get(at).value().map(Object::toString).orElse("")).toList();
    List<String> sources = texts.stream().filter(t -> !t.isBlank()).distinct().toList();
    if (sources.size() == texts.size()) {
      return table;
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (int r = 0; r < texts.size(); r++) {
      List<Cell> row = new ArrayList<>(table.rows().get(r));
      int number = sources.indexOf(texts.get(r)) + 1;
      row.set(at, number == 0 ? Cell.BLANK : Cell.text("[" + number + "]"));
      rows.add(row);
    }
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < sources.size(); i++) {
      notes.add("[" + (i + 1) + "] " + sources.get(i) + ".");
    }
    notes.addAll(table.notes());
    return with(table, table.columns(), rows, notes);
  }

  private static Table grouped(Table table, TableFormat format) {
    int body = table.rows().size() - table.totals();
    if (IntStream.range(0, body).anyMatch(table::isHeading)) {
      return table;
    }
    Map<String, String> everything = everything(table, body, format);
    Map<String, List<Integer>> alike = new LinkedHashMap<>();
    for (int r = 0; r < body; r++) {
      alike.computeIfAbsent(key(table, r, format, everything), k -> new ArrayList<>()).add(r);
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (List<Integer> group : alike.values()) {
      Set<Integer> numbers =
          group.stream()
              .map(r -> number(name(table, r)))
              .collect(Collectors.toCollection(TreeSet::new));
      boolean isRun =
          numbers.size() == group.size()
              && group.size() > 1
              && max(numbers) - min(numbers) == numbers.size() - 1;
      if (isRun) {
        rows.add(renamed(table.rows().get(group.get(0)), name(table, group.get(0)), numbers));
      } else {
        group.forEach(r -> rows.add(table.rows().get(r)));
      }
    }
    if (rows.size() == body) {
      return table;
    }
    rows.addAll(table.rows().subList(body, table.rows().size()));
    return with(table, table.columns(), rows, table.notes());
  }

  /** What rows of one group share; a row without a number has its own. */
  private static String key(
      Table table, int row, TableFormat format, Map<String, String> everything) {
    String name = name(table, row);
    Matcher parts = NUMBERED.matcher(name);
    return parts.matches()
        ? "like " + parts.group(1) + entries(table, row, format) + everything.get(name)
        : "row " + row;
  }

  /** All that the table says under each name: only names that are alike in all of it are one. */
  private static Map<String, String> everything(Table table, int body, TableFormat format) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (int r = 0; r < body; r++) {
      texts.merge(name(table, r), entries(table, r, format), String::concat);
    }
    return texts;
  }

  private static String entries(Table table, int row, TableFormat format) {
    StringBuilder text = new StringBuilder("\n");
    for (int i = 1; i < table.columns().size(); i++) {
      text.append('\t').append(format.text(table.columns().get(i), table.rows().get(row).get(i)));
    }
    return text.toString();
  }

  private static List<Cell> renamed(List<Cell> row, String name, Set<Integer> numbers) {
    Matcher parts = NUMBERED.matcher(name);
    if (!parts.matches()) {
      throw new IllegalStateException(name);
    }
    List<Cell> renamed = new ArrayList<>(row);
    String range = min(numbers) + " to " + max(numbers);
    renamed.set(0, Cell.text(parts.group(1) + range + parts.group(3) + ", each"));
    return renamed;
  }

  private static String name(Table table, int row) {
    Cell first = table.rows().get(row).get(0);
    boolean isText = !table.columns().get(0).measure().isNumber();
    return isText ? first.value().map(Object::toString).orElse("") : "";
  }

  private static int number(String name) {
    Matcher parts = NUMBERED.matcher(name);
    return parts.matches() ? Integer.parseInt(parts.group(2)) : -1;
  }

  private static int min(Set<Integer> numbers) {
    return numbers.stream().mapToInt(n -> n).min().orElseThrow();
  }

  private static int max(Set<Integer> numbers) {
    return numbers.stream().mapToInt(n -> n).max().orElseThrow();
  }

  private static Table with(
      Table table, List<Column> columns, List<List<Cell>> rows, List<String> notes) {
    return new Table(table.id(), table.title(), columns, rows, notes, table.totals());
  }
}
