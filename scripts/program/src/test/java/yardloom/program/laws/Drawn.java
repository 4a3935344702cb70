package yardloom.program.laws;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.Plugins;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.CsvWriter;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Quantity;
import yardloom.language.limit.RunLimits;
import yardloom.language.run.PlanRunner;

/** All that the shipped plugins say of a plan's text: its tables, exact and as printed. */
public final class Drawn {
  private static final Plugins PLUGINS = PluginLoader.load(Drawn.class.getClassLoader());
  private static final PlanRunner RUNNER =
      new PlanRunner(
          PLUGINS.lexicon(), RunLimits.standard(), (scope, word) -> java.util.Optional.empty());
  private static final Map<String, Drawn> MADE = new LinkedHashMap<>();

  private final Outcome outcome;
  private final Map<String, Table> tables = new TreeMap<>();

  private Drawn(Outcome outcome) {
    this.outcome = outcome;
    outcome.tables().forEach(t -> tables.put(t.id(), t));
  }

  /** Draws a plan; the same text is drawn once. */
  static synchronized Drawn of(String script) {
    return MADE.computeIfAbsent(script, Drawn::draw);
  }

  /** Draws a plan that reads a file beside it; not kept. */
  static Drawn beside(String script, String name, String text) {
    return new Drawn(study(script, PLUGINS, Map.of(name, text)));
  }

  /** Draws a plan without some of the plugins, so that laws can try many; not kept. */
  static Drawn without(List<String> plugins, String script) {
    return new Drawn(
        study(
            script,
            PluginLoader.of(
                PLUGINS.all().stream().filter(p -> !plugins.contains(p.info().id())).toList())));
  }

  private static Drawn draw(String script) {
    return new Drawn(study(script, PLUGINS));
  }

  /** What some of the plugins find of a plan, not kept. */
  public static Outcome study(String script, Plugins plugins) {
    return study(script, plugins, Map.of());
  }

  private static Outcome study(String script, Plugins plugins, Map<String, String> beside) {
    try {
      Path file = Files.createTempDirectory("yardloom-laws").resolve("yard.groovy");
      Files.writeString(file, script, StandardCharsets.UTF_8);
      for (Map.Entry<String, String> other : beside.entrySet()) {
        Files.writeString(file.resolveSibling(other.getKey()), other.getValue());
      }
      Outcome outcome = new Study(plugins).of(RUNNER.run(file, Map.of()));
      Files.delete(file);
      for (String other : beside.keySet()) {
        Files.delete(file.resolveSibling(other));
      }
      Files.delete(file.getParent());
      return outcome;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Plugins plugins() {
    return PLUGINS;
  }

  Outcome outcome() {
    return outcome;
  }

  Map<String, Table> tables() {
    return tables;
  }

  private Table table(String id) {
    Table table = tables.get(id);
    if (table == null) {
      throw new IllegalArgumentException("no table " + id + " in " + tables.keySet());
    }
    return table;
  }

  /** The first cells of the rows, in their order. */
  List<String> rows(String id) {
    return table(id).rows().stream().map(r -> text(table(id).columns().get(0), r.get(0))).toList();
  }

  /** The exact value of a cell, a quantity in SI units. */
  double exact(String id, String row, String column) {
    Cell cell = cell(id, row, column);
    // Columns that add up as printed keep their digits in the reason.
    return value(cell.why().map(w -> new Cell(Optional.of(w.value()), cell.why())).orElse(cell));
  }

  /** The cell as the data file prints it. */
  String printed(String id, String row, String column) {
    return text(table(id).columns().get(column(id, column)), cell(id, row, column));
  }

  /** The exact values of a column, where it has numbers. */
  List<Double> column(String id, String column, int leaveOut) {
    int at = column(id, column);
    List<Double> values = new ArrayList<>();
    List<List<Cell>> rows = table(id).rows();
    for (List<Cell> row : rows.subList(0, rows.size() - leaveOut)) {
      if (row.get(at).value().isPresent()) {
        values.add(value(row.get(at)));
      }
    }
    return values;
  }

  /** The texts of a column, empty where there are none. */
  List<String> texts(String id, String column) {
    int at = column(id, column);
    return table(id).rows().stream()
        .map(r -> text(table(id).columns().get(at), r.get(at)))
        .toList();
  }

  /** The sum of a column without the rows of totals. */
  double sum(String id, String column) {
    return column(id, column, table(id).totals()).stream().mapToDouble(v -> v).sum();
  }

  private Cell cell(String id, String row, String column) {
    int at = rows(id).indexOf(row);
    if (at < 0) {
      throw new IllegalArgumentException("no row " + row + " in " + rows(id));
    }
    return table(id).rows().get(at).get(column(id, column));
  }

  private int column(String id, String column) {
    List<String> names = table(id).columns().stream().map(Column::id).toList();
    if (!names.contains(column)) {
      throw new IllegalArgumentException("no column " + column + " in " + names);
    }
    return names.indexOf(column);
  }

  static double value(Cell cell) {
    Object value = cell.value().orElseThrow();
    if (value instanceof Quantity<?> quantity) {
      return quantity.in(yardloom.kernel.unit.UnitSystem.METRIC.unit(quantity.dimension()));
    }
    return ((Number) value).doubleValue();
  }

  private String text(Column column, Cell cell) {
    return format().plain(column, cell);
  }

  TableFormat format() {
    return TableFormat.of(outcome.plan().info());
  }

  /** All tables as their data files have them, by id. */
  Map<String, String> csv() {
    Map<String, String> all = new TreeMap<>();
    for (Table table : tables.values()) {
      StringBuilder text = new StringBuilder();
      try {
        CsvWriter.write(table, format(), text);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      all.put(table.id(), text.toString());
    }
    return all;
  }
}
