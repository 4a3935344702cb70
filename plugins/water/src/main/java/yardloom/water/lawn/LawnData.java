package yardloom.water.lawn;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Choices;
import yardloom.water.data.WaterTables;
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
    Map<String, Source> sources = WaterTables.sources();
    Map<Turf, Cited<Grass>> found = new EnumMap<>(Turf.class);
    for (Map<String, String> row : WaterTables.rows("turf.csv")) {
      TurfYear year =
          new TurfYear(
              Double.parseDouble(row.get("kc_ini")),
              Double.parseDouble(row.get("kc_mid")),
              Double.parseDouble(row.get("kc_end")),
              Temperature.celsius(Double.parseDouble(row.get("grows_from_c"))));
      found.put(
          Choices.parse(Turf.class, row.get("turf")),
          new Cited<>(grass(row, year), sources.get(row.get("source"))));
    }
    return found;
  }

  private static Grass grass(Map<String, String> row, TurfYear year) {
    return new Grass(
        year,
        Length.metres(Double.parseDouble(row.get("height_m"))),
        Length.metres(Double.parseDouble(row.get("root_low_m"))),
        Length.metres(Double.parseDouble(row.get("root_high_m"))),
        Double.parseDouble(row.get("easy_share")));
  }

  private static Map<String, Cited<Double>> trees() {
    Map<String, Source> sources = WaterTables.sources();
    Map<String, Cited<Double>> found = new TreeMap<>();
    for (Map<String, String> row : WaterTables.rows("tree-factors.csv")) {
      found.put(
          row.get("air"),
          new Cited<>(Double.valueOf(row.get("factor")), sources.get(row.get("source"))));
    }
    return found;
  }
}
