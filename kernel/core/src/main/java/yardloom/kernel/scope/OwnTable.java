package yardloom.kernel.scope;

import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.OwnColumns;

/**
 * A table of a user's own, handed to a word as text. What is wrong in it is told at the word, with
 * the place in the table: file, line and column.
 *
 * @param name of the file, for messages
 */
public record OwnTable(PlanScope plan, String name, String csv) {
  /**
   * Checks the name, which stands in every message and source of the rows.
   *
   * @throws PlanException (OUT_OF_RANGE) if it is no name: see {@link Making#name}
   */
  public OwnTable {
    Making.name("table", name);
  }

  /** A table whose file the script may not have named. */
  public static OwnTable of(PlanScope plan, String csv, String name, String otherwise) {
    return new OwnTable(plan, name == null ? otherwise : name, csv);
  }

  /**
   * Hands on the one row that a word says: by the plan, where the word names no source. A problem
   * without a place is put at the word.
   *
   * @param what the row is, such as "head part"
   * @param source as the word says it, or null
   */
  public static void ofOne(PlanScope plan, String what, Source source, Consumer<Source> reader) {
    try {
      reader.accept(source == null ? Source.plan(what + " of the plan") : source);
    } catch (PlanException e) {
      throw e.at(plan.place());
    }
  }

  /** The source of rows that name none. */
  public Source source() {
    return Source.plan(name);
  }

  /**
   * Hands on row by row. A problem without a place is put at the cell of the first needed column,
   * which names what the row is about.
   *
   * @param needed the columns that the table must have, at least one
   * @param may the others that it may have, beside those of a source
   */
  public void each(List<String> needed, Collection<String> may, Consumer<DataRow> reader) {
    reading(
        () -> {
          for (DataRow row : OwnColumns.rows(name, csv, needed, may)) {
            try {
              reader.accept(row);
            } catch (PlanException e) {
              throw e.at(row.placeOf(needed.get(0)));
            }
          }
        });
  }

  /** Puts the problems of another way of reading the table at the word. */
  public void reading(Runnable reader) {
    try {
      reader.run();
    } catch (PlanException e) {
      throw e.inTextOf(plan.place());
    }
  }
}
