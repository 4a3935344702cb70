package yardloom.sun.light;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.sun.light.LightScheme.LightClass;

/** Reads limits of sun that a plan or a regional file gives. */
final class OwnScheme {
  private static final double LONGEST_H = 24;

  private OwnScheme() {}

  /**
   * The scheme of a table class,from_hours; exactly so many hours belong to the class.
   *
   * @throws PlanException with the table's line for an unknown class, for hours outside 0 to 24 or
   *     not falling, and for a last class that does not begin at 0
   */
  static LightScheme read(String name, String csv, Source source) {
    String file = "light scheme " + name;
    List<LightClass> classes = new ArrayList<>();
    List<DataRow> rows = DataTable.parse(file, csv).rows();
    for (DataRow row : rows) {
      classes.add(lightClass(row, classes));
    }
    if (classes.isEmpty() || classes.get(classes.size() - 1).fromHours() != 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          rows.isEmpty() ? new SourceRef(file, 1, 1) : rows.get(rows.size() - 1).place(),
          "the last class of a light scheme begins at 0 h; end the table with a line such as"
              + " shade,0");
    }
    return new LightScheme(name, classes, source);
  }

  private static LightClass lightClass(DataRow row, List<LightClass> before) {
    String called = row.text("class");
    // Plants say their need in these words.
    TreeSet<String> known = new TreeSet<>();
    for (String shipped : LightSchemes.names()) {
      LightSchemes.named(shipped).classes().forEach(c -> known.add(c.name()));
    }
    if (!known.contains(called)) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          row.placeOf("class"),
          "plants know no light '"
              + called
              + "'; a class is one of "
              + String.join(", ", known)
              + "."
              + Nearest.hint(called, known));
    }
    if (before.stream().anyMatch(c -> c.name().equals(called))) {
      throw new PlanException(
          ProblemCode.DUPLICATE, row.placeOf("class"), "'" + called + "' already has its hours");
    }
    double most = before.isEmpty() ? LONGEST_H : before.get(before.size() - 1).fromHours();
    double from = row.number("from_hours");
    if (!(from >= 0 && from <= LONGEST_H) || !before.isEmpty() && from >= most) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          row.placeOf("from_hours"),
          "'"
              + called
              + "' begins at 0 h or more a day and "
              + (before.isEmpty() ? "at most 24 h" : "below the " + most + " h of the class before")
              + ", got "
              + from
              + " h");
    }
    return new LightClass(called, from, true);
  }
}
