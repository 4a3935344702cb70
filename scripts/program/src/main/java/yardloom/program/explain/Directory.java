package yardloom.program.explain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.program.output.RowNames;

/** All printed cells by table, row and column. */
public final class Directory {
  /** Longer cells are sentences, not names. */
  private static final int SHORT = 60;

  private final Map<Table, List<String>> rows = new LinkedHashMap<>();
  private final List<Askable> cells = new ArrayList<>();

  Directory(List<Table> tables, TableFormat format) {
    for (Table table : tables) {
      List<List<String>> naming = naming(table, format);
      List<String> names = RowNames.of(naming);
      rows.put(table, names);
      for (int r = 0; r < naming.size(); r++) {
        add(table, r, names.get(r), naming.get(r));
      }
    }
  }

  /** What the rows of a table are asked for by. */
  public static List<String> rowNames(Table table, TableFormat format) {
    return RowNames.of(naming(table, format));
  }

  /** Rows that are called alike under several headings are told apart by these, before all else. */
  private static List<List<String>> naming(Table table, TableFormat format) {
    List<List<String>> own = table.rows().stream().map(row -> naming(table, row, format)).toList();
    List<List<String>> under = new ArrayList<>();
    Set<String> firsts = new HashSet<>();
    boolean alike = false;
    String heading = "";
    for (int r = 0; r < own.size(); r++) {
      List<String> row = new ArrayList<>(own.get(r));
      if (table.isHeading(r)) {
        heading = row.get(0);
      } else {
        alike |= !firsts.add(RowNames.key(row.get(0)));
        row.set(0, heading.isEmpty() ? row.get(0) : heading + ", " + row.get(0));
      }
      under.add(row);
    }
    return alike ? under : own;
  }

  private void add(Table table, int r, String name, List<String> naming) {
    if (table.isHeading(r)) {
      return;
    }
    String about = naming.stream().filter(t -> t.length() < SHORT).collect(Collectors.joining(" "));
    String key = RowNames.key(name);
    for (int c = 0; c < table.columns().size(); c++) {
      Cell cell = table.rows().get(r).get(c);
      if (cell.value().isPresent()) {
        cells.add(new Askable(table, name, key, about, table.columns().get(c), cell));
      }
    }
  }

  /** What each cell says that may name the row: given text, and whatever stands first. */
  private static List<String> naming(Table table, List<Cell> row, TableFormat format) {
    return IntStream.range(0, row.size())
        .mapToObj(
            c -> {
              Column column = table.columns().get(c);
              boolean names =
                  c == 0 || column.measure() == Measure.TEXT && row.get(c).why().isEmpty();
              return names ? format.text(column, row.get(c)) : "";
            })
        .toList();
  }

  List<Table> tables() {
    return List.copyOf(rows.keySet());
  }

  /** Every cell that says something, in order. */
  List<Askable> cells() {
    return cells;
  }

  /** The cells that stand in {@code table}. */
  List<Askable> cells(Table table) {
    return cells.stream().filter(c -> c.table() == table).toList();
  }

  /** The table of that id or title. */
  Optional<Table> table(String name) {
    String key = RowNames.key(name);
    return rows.keySet().stream()
        .filter(t -> t.id().equals(key) || RowNames.key(t.title()).equals(key))
        .findFirst();
  }

  /** The cells whose column has that id; if none has, that title. */
  static List<Askable> inColumn(List<Askable> cells, String name) {
    String key = RowNames.key(name);
    List<Askable> byId = cells.stream().filter(c -> c.column().id().equals(key)).toList();
    return byId.isEmpty()
        ? cells.stream().filter(c -> RowNames.key(c.column().title()).equals(key)).toList()
        : byId;
  }
}
