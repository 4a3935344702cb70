package yardloom.kernel.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Unit;

/** Tables of a user's own: what columns they may have, and cells that may be missing. */
public final class OwnColumns {
  /** The columns in which every table may name its source. */
  private static final List<String> SOURCE =
      List.of("title", "publisher", "year", "locator", "standing");

  private OwnColumns() {}

  /**
   * The rows of a table.
   *
   * @param needed the columns it must have
   * @param may the others that it may have, beside those of a source
   * @throws PlanException for a column that means nothing, with the nearest; if it has no rows
   */
  public static List<DataRow> rows(
      String name, String csv, List<String> needed, Collection<String> may) {
    List<DataRow> rows = DataTable.parse(name, csv).rows();
    Set<String> known = new TreeSet<>(may);
    known.addAll(needed);
    known.addAll(SOURCE);
    if (rows.isEmpty()) {
      throw new PlanException(
          ProblemCode.SYNTAX,
          new SourceRef(name, 1, 1),
          "the table has a header and a line for each; columns are " + String.join(", ", known));
    }
    for (String column : new TreeSet<>(rows.get(0).cells().keySet())) {
      if (!known.contains(column)) {
        List<String> near = new ArrayList<>(Nearest.sharingAWord(column, known));
        String hint = Nearest.hint(column, known);
        throw new PlanException(
            ProblemCode.UNKNOWN_WORD,
            new SourceRef(name, 1, 0),
            "there is no column `"
                + column
                + "`."
                + (!hint.isEmpty()
                    ? hint
                    : near.isEmpty()
                        ? " Columns are " + String.join(", ", known) + "."
                        : " There is `" + String.join("`, `", near) + "`."));
      }
    }
    needed.forEach(rows.get(0)::text);
    return rows;
  }

  /** The text of a column that the table may lack; empty if it does or the cell is. */
  public static Optional<String> text(DataRow row, String column) {
    return row.cells().containsKey(column)
        ? Optional.of(row.text(column)).filter(t -> !t.isEmpty())
        : Optional.empty();
  }

  /** The number of a column that the table may lack. */
  public static Optional<Double> number(DataRow row, String column) {
    return text(row, column).map(t -> row.number(column));
  }

  /**
   * The SI value of a figure whose column names its unit, such as {@code bore_in} or {@code
   * bore_mm}; none where neither is filled.
   *
   * @throws PlanException (DUPLICATE) if the row has it in two units
   */
  public static Optional<Double> measured(DataRow row, String what, List<String> units) {
    Optional<Double> found = Optional.empty();
    for (String unit : units) {
      String column = what + "_" + unit;
      Optional<Double> given = number(row, column);
      if (given.isPresent() && found.isPresent()) {
        throw new PlanException(
            ProblemCode.DUPLICATE,
            row.placeOf(column),
            "the row has `" + what + "` in two units; leave one empty");
      }
      if (given.isPresent()) {
        found = given.map(Unit.byWord(unit).orElseThrow()::toSi);
      }
    }
    return found;
  }

  /** The columns of such a figure. */
  public static List<String> columns(String what, List<String> units) {
    return units.stream().map(u -> what + "_" + u).toList();
  }
}
