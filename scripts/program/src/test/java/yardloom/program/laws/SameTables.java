package yardloom.program.laws;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;

/**
 * Compares all tables of two yards cell by cell: numbers by their exact values, times what the law
 * asks, texts as they stand. A column that a law leaves out stands in its list with the reason; one
 * that is listed in vain is told too.
 */
final class SameTables {
  /** What a number has to be multiplied by, for a column of a table. */
  interface Factor {
    double of(String table, Column column);
  }

  private final Map<String, String> leftOut = new LinkedHashMap<>();
  private final Map<String, Double> loose = new HashMap<>();
  private final Set<String> used = new TreeSet<>();
  private Factor factor = (table, column) -> 1;
  private String rowsLeftOut = "";

  /** {@code table} or {@code table.column}, not compared, and why. */
  SameTables without(String column, String why) {
    leftOut.put(column, why);
    return this;
  }

  /** A column that may differ by so much, with why. */
  SameTables within(String column, double difference, String why) {
    if (why.isBlank()) {
      throw new IllegalArgumentException("say why " + column + " may differ");
    }
    loose.put(column, difference);
    return this;
  }

  SameTables times(Factor by) {
    factor = by;
    return this;
  }

  /** Rows whose first cell matches are not compared. */
  SameTables withoutRows(String pattern) {
    rowsLeftOut = pattern;
    return this;
  }

  /** What differs, one line each. */
  List<String> differences(Drawn one, Drawn other) {
    List<String> found = new ArrayList<>();
    Set<String> ids = new TreeSet<>(one.tables().keySet());
    ids.addAll(other.tables().keySet());
    for (String id : ids) {
      if (isLeftOut(id, "")) {
        continue;
      }
      Table a = one.tables().get(id);
      Table b = other.tables().get(id);
      if (a == null || b == null) {
        found.add(id + " is in one of them only");
      } else {
        compare(a, b, found);
      }
    }
    leftOut.keySet().stream()
        .filter(c -> !used.contains(c))
        .forEach(c -> found.add(c + " is left out without need"));
    return found;
  }

  private boolean isLeftOut(String table, String column) {
    String name = column.isEmpty() ? table : table + "." + column;
    if (leftOut.containsKey(name)) {
      used.add(name);
      return true;
    }
    return false;
  }

  private void compare(Table a, Table b, List<String> found) {
    Map<String, List<Cell>> rows = rows(b);
    Map<String, List<Cell>> first = rows(a);
    for (String key : first.keySet()) {
      if (!rows.containsKey(key)) {
        found.add(a.id() + " has the row " + key + " in one of them only");
        continue;
      }
      for (int i = 1; i < a.columns().size(); i++) {
        Column column = a.columns().get(i);
        if (!isLeftOut(a.id(), column.id())) {
          String what = a.id() + "." + column.id() + " of " + key + ": ";
          compare(what, a.id(), column, first.get(key).get(i), rows.get(key).get(i), found);
        }
      }
    }
    if (rows.size() != first.size()) {
      found.add(a.id() + " has " + first.size() + " and " + rows.size() + " rows");
    }
  }

  /** Rows by their first cell and how often it stood there before. */
  private Map<String, List<Cell>> rows(Table table) {
    Map<String, List<Cell>> rows = new LinkedHashMap<>();
    Map<String, Integer> seen = new HashMap<>();
    for (List<Cell> row : table.rows()) {
      String name = row.get(0).value().map(Object::toString).orElse("");
      if (!name.matches(rowsLeftOut)) {
        rows.put(name + " " + seen.merge(name, 1, Integer::sum), row);
      }
    }
    return rows;
  }

  private void compare(
      String what, String table, Column column, Cell a, Cell b, List<String> found) {
    boolean isNumber = column.measure() != Measure.TEXT && a.value().isPresent();
    if (isNumber && b.value().isPresent() && !(a.value().get() instanceof String)) {
      double wanted = Drawn.value(a) * factor.of(table, column);
      double slack =
          loose.getOrDefault(table + "." + column.id(), 0.0) + 1e-6 * (1e-3 + Math.abs(wanted));
      if (Math.abs(wanted - Drawn.value(b)) > slack) {
        found.add(what + wanted + " was wanted, " + Drawn.value(b) + " it is");
      }
    } else if (!a.value().equals(b.value())) {
      found.add(what + a.value() + " and " + b.value());
    }
  }
}
