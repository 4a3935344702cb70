package yardloom.water.roof;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import yardloom.kernel.source.Cited;
import yardloom.kernel.source.Source;
import yardloom.water.data.WaterTables;

/**
 * The share of the rain that a roof sheds into its gutter, by surface.
 *
 * <p>Sources give ranges; the low end is used, so that a tank is not promised too much.
 */
public final class RoofShares {
  /** For surfaces that no row knows. */
  public static final Cited<Double> ANY_ROOF =
      new Cited<>(0.75, WaterTables.sources().get("AGRILIFE"));

  private static final List<Row> ROWS = read();

  private record Row(String surface, Cited<Double> share) {}

  private RoofShares() {}

  /** The first row whose surface is named in {@code surface}, or {@link #ANY_ROOF}. */
  public static Cited<Double> of(String surface) {
    String low = surface.toLowerCase(Locale.ROOT);
    return ROWS.stream()
        .filter(r -> low.contains(r.surface))
        .map(Row::share)
        .findFirst()
        .orElse(ANY_ROOF);
  }

  /** The surfaces that have a row. */
  public static List<String> surfaces() {
    return ROWS.stream().map(Row::surface).toList();
  }

  private static List<Row> read() {
    Map<String, Source> sources = WaterTables.sources();
    return WaterTables.rows("roofs.csv").stream()
        .map(
            r ->
                new Row(
                    r.get("surface"),
                    new Cited<>(Double.valueOf(r.get("share")), sources.get(r.get("source")))))
        .toList();
  }
}
