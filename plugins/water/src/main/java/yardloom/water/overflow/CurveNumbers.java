package yardloom.water.overflow;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Cited;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.water.overflow.formula.SoilGroup;

/** Curve numbers of ground covers by soil group. */
public final class CurveNumbers {
  private static final Map<String, Map<SoilGroup, Cited<Double>>> TABLE = read();

  private CurveNumbers() {}

  /**
   * The number of a cover.
   *
   * @throws PlanException (UNKNOWN_WORD) without a place
   */
  public static Cited<Double> of(String cover, SoilGroup group) {
    Map<SoilGroup, Cited<Double>> row = TABLE.get(cover);
    if (row == null) {
      throw new PlanException(
          ProblemCode.UNKNOWN_WORD,
          "no curve number for '"
              + cover
              + "'; known covers are "
              + String.join(", ", TABLE.keySet())
              + "."
              + Nearest.hint(cover, TABLE.keySet()));
    }
    return row.get(group);
  }

  private static Map<String, Map<SoilGroup, Cited<Double>>> read() {
    SourceTable sources = SourceTable.beside(CurveNumbers.class);
    Map<String, Map<SoilGroup, Cited<Double>>> table = new TreeMap<>();
    for (DataRow row : DataTable.shipped(CurveNumbers.class, "curve-numbers.csv").rows()) {
      Map<SoilGroup, Cited<Double>> numbers = new TreeMap<>();
      for (SoilGroup group : SoilGroup.values()) {
        double number = row.number(group.name().toLowerCase(Locale.ROOT));
        numbers.put(group, new Cited<>(number, sources.cited(row, "source")));
      }
      table.put(row.text("cover"), numbers);
    }
    return table;
  }
}
