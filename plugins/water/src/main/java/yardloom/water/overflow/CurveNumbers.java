package yardloom.water.overflow;

import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.water.data.WaterTables;
import yardloom.water.overflow.formula.SoilGroup;

/** Curve numbers of ground covers by soil group. */
public final class CurveNumbers {
  private static final Map<String, Map<SoilGroup, Cited<Double>>> TABLE = read();

  private CurveNumbers() {}

  public static Set<String> covers() {
    return Collections.unmodifiableSet(TABLE.keySet());
  }

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
    Map<String, Source> sources = WaterTables.sources();
    Map<String, Map<SoilGroup, Cited<Double>>> table = new TreeMap<>();
    for (Map<String, String> row : WaterTables.rows("curve-numbers.csv")) {
      Map<SoilGroup, Cited<Double>> numbers = new TreeMap<>();
      for (SoilGroup group : SoilGroup.values()) {
        double number = Double.parseDouble(row.get(group.name().toLowerCase(Locale.ROOT)));
        numbers.put(group, new Cited<>(number, sources.get(row.get("source"))));
      }
      table.put(row.get("cover"), numbers);
    }
    return table;
  }
}
