package yardloom.program.compare;

import java.util.List;

/**
 * A table as {@code results.json} has it: what its cells show.
 *
 * @param naming for each row what its cells say that may name it; empty texts for figures
 * @param cells row by row, column by column; empty texts for blank cells
 */
record ResultGrid(
    String id,
    String title,
    List<Head> columns,
    List<List<String>> naming,
    List<List<String>> cells) {
  /** A column. */
  record Head(String id, String title) {}

  /** The column of that id, from 0; -1 if there is none. */
  int column(String column) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).id().equals(column)) {
        return i;
      }
    }
    return -1;
  }

  /** What a cell shows; empty if row or column are missing. */
  String shown(int row, String column) {
    int c = column(column);
    return row < 0 || c < 0 ? "" : cells.get(row).get(c);
  }
}
