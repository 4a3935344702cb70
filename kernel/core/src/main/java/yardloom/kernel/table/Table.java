package yardloom.kernel.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A titled grid of cells.
 *
 * @param id file name of the CSV, lower case with hyphens
 * @param notes sentences printed under the table: method, sources, cautions
 * @param totals how many of the last rows are totals, set off by a rule
 */
public record Table(
    String id,
    String title,
    List<Column> columns,
    List<List<Cell>> rows,
    List<String> notes,
    int totals) {
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    notes = List.copyOf(notes);
    for (List<Cell> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "table " + id + " has " + columns.size() + " columns, a row has " + row.size());
      }
    }
  }

  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * Whether a row is the heading of those below it: the first cell alone says something. Sheets let
   * it run across the columns, and never leave it behind at the foot of a page.
   */
  public boolean isHeading(int row) {
    List<Cell> cells = rows.get(row);
    return columns.size() > 1
        && isFilled(cells.get(0))
        && cells.subList(1, cells.size()).stream().noneMatch(Table::isFilled);
  }

  private static boolean isFilled(Cell cell) {
    return cell.value().filter(v -> !v.toString().isBlank()).isPresent();
  }

  public static Builder titled(String id, String title) {
    return new Builder(id, title);
  }

  /** Collects columns, rows and notes. */
  public static final class Builder {
    private final String id;
    private final String title;
    private final List<Column> columns = new ArrayList<>();
    private final List<List<Cell>> rows = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private int totals;

    private Builder(String id, String title) {
      this.id = id;
      this.title = title;
    }

    public Builder column(Column column) {
      columns.add(column);
      return this;
    }

    public Builder row(Cell... cells) {
      rows.add(List.of(cells));
      return this;
    }

    public Builder row(List<Cell> cells) {
      rows.add(cells);
      return this;
    }

    /** A heading of the rows that follow; call after all columns. */
    public Builder heading(String text) {
      List<Cell> cells = new ArrayList<>(Collections.nCopies(columns.size(), Cell.BLANK));
      cells.set(0, Cell.text(text));
      return row(cells);
    }

    /** A row of totals; call after all other rows. */
    public Builder total(Cell... cells) {
      totals++;
      return row(cells);
    }

    public Builder note(String note) {
      notes.add(note);
      return this;
    }

    public Table build() {
      return new Table(id, title, columns, rows, notes, totals);
    }
  }
}
