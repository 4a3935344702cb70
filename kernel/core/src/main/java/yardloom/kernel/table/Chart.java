package yardloom.kernel.table;

import java.util.List;

/**
 * A chart of figures that stand in a table. It names columns and holds no figures, so that it
 * cannot show any other than the table does.
 *
 * @param id lower case with hyphens, unique among all charts
 * @param title what it shows, without the unit
 * @param columns ids of columns of the table: for {@link Kind#BARS} one for each series, for {@link
 *     Kind#RANGES} low, likely and high, for {@link Kind#GRID} those across, for {@link Kind#SPANS}
 *     the first and the last day
 * @param totals whether the table's totals are drawn too
 */
public record Chart(String id, String title, Kind kind, List<String> columns, boolean totals) {
  /** How the rows are drawn. */
  public enum Kind {
    /** A group of bars for each row, such as need and supply of each month. */
    BARS,
    /** A line from low to high with a mark at what is likely, for each row. */
    RANGES,
    /** A field of squares, darker for more, such as beds against months. */
    GRID,
    /** A bar along the year for each row. */
    SPANS
  }

  public Chart {
    columns = List.copyOf(columns);
    if (!id.matches("[a-z0-9-]+")) {
      throw new IllegalArgumentException("chart id \"" + id + "\" is not lower-case-with-hyphens");
    }
    int fewest = kind == Kind.RANGES ? 3 : kind == Kind.SPANS ? 2 : 1;
    boolean exactly = kind == Kind.RANGES || kind == Kind.SPANS;
    if (columns.size() < fewest || exactly && columns.size() > fewest) {
      throw new IllegalArgumentException(
          "chart " + id + " of kind " + kind + " names " + columns.size() + " columns");
    }
  }

  /** A chart of the rows without totals. */
  public static Chart of(String id, String title, Kind kind, String... columns) {
    return new Chart(id, title, kind, List.of(columns), false);
  }

  /** The same with the totals. */
  public Chart withTotals() {
    return new Chart(id, title, kind, columns, true);
  }
}
