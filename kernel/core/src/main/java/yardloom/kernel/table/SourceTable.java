package yardloom.kernel.table;

import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * Sources by the code that other tables cite them by; columns code, title, publisher, year,
 * locator, standing.
 */
public final class SourceTable {
  private final String name;
  private final Map<String, Source> byCode;

  private SourceTable(String name, Map<String, Source> byCode) {
    this.name = name;
    this.byCode = byCode;
  }

  /** The table {@code sources.csv} beside a class. */
  public static SourceTable beside(Class<?> owner) {
    DataTable table = DataTable.shipped(owner, "sources.csv");
    Map<String, Source> byCode = new TreeMap<>();
    for (DataRow row : table.rows()) {
      if (byCode.put(row.text("code"), row.source()) != null) {
        throw new IllegalStateException(
            table.name()
                + " has two sources \""
                + row.text("code")
                + "\" ("
                + owner.getName()
                + ")");
      }
    }
    return new SourceTable(table.name(), byCode);
  }

  /**
   * The source of that code.
   *
   * @throws IllegalStateException if there is none
   */
  public Source source(String code) {
    Source found = byCode.get(code);
    if (found == null) {
      throw new IllegalStateException(name + " has no source \"" + code + "\"");
    }
    return found;
  }

  /**
   * The source that a row cites in a column.
   *
   * @throws PlanException (UNKNOWN_WORD) at the cell, if there is none of that code
   */
  public Source cited(DataRow row, String column) {
    Source found = byCode.get(row.text(column));
    if (found == null) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          row.placeOf(column),
          name + " has no source \"" + row.text(column) + "\"; add a row of that code");
    }
    return found;
  }
}
