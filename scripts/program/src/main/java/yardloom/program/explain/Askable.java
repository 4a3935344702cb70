package yardloom.program.explain;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;

/**
 * A cell that can be asked for.
 *
 * @param row the name of its row, unique in its table
 * @param key what that name is looked up by
 * @param about what the short cells of its row say
 */
record Askable(Table table, String row, String key, String about, Column column, Cell cell) {

  /** The text to type for it. */
  String address() {
    return table.id() + " / " + row + " / " + column.id();
  }

  Optional<Derived<?>> why() {
    return cell.why();
  }
}
