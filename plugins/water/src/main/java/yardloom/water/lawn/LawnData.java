package yardloom.water.lawn;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.source.Cited;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Choices;
import yardloom.water.lawn.FormerLawn.Turf;
import yardloom.water.lawn.formula.TurfYear;

/** What turf and standing trees use, as multiples of reference evapotranspiration. */
public final class LawnData {
  /**
   * One kind of turf.
   *
   * @param height as it is mown
   * @param easyShare share of the water within its roots that it draws without stress
   */
  public record Grass(
      TurfYear year, Length height, Length rootsFrom, Length rootsTo, double easyShare) {}

  private static final SourceTable SOURCES = SourceTable.beside(LawnData.class);
  private static final Map<Turf, Cited<Grass>> TURFS = turfs();
  private static final Map<String, Cited<Double>> TREES = trees();

  private LawnData() {}

  /** What is known of one kind of turf. */
  public static Cited<Grass> turf(Turf kind) {
    return TURFS.get(kind);
  }

  /** The factor of trees in dry or in humid air. */
  public static Cited<Double> trees(boolean isDry) {
    return TREES.get(isDry ? "dry" : "humid");
  }

  private static Map<Turf, Cited<Grass>> turfs() {
    Map<Turf, Cited<Grass>> found = new EnumMap<>(Turf.class);
    for (DataRow row : DataTable.shipped(LawnData.class, "turf.csv").rows()) {
      TurfYear year =
          new TurfYear(
              row.number("kc_ini"),
              row.number("kc_mid"),
              row.number("kc_end"),
              Temperature.celsius(row.number("grows_from_c")));
      found.put(
          Choices.parse(Turf.class, row.text("turf")),
          new Cited<>(grass(row, year), SOURCES.cited(row, "source")));
    }
    return found;
  }

  private static Grass grass(DataRow row, TurfYear year) {
    return new Grass(
        year,
        Length.metres(row.number("height_m")),
        Length.metres(row.number("root_low_m")),
        Length.metres(row.number("root_high_m")),
        row.number("easy_share"));
  }

  private static Map<String, Cited<Double>> trees() {
    Map<String, Cited<Double>> found = new TreeMap<>();
    for (DataRow row : DataTable.shipped(LawnData.class, "tree-factors.csv").rows()) {
      found.put(row.text("air"), new Cited<>(row.number("factor"), SOURCES.cited(row, "source")));
    }
    return found;
  }
}
