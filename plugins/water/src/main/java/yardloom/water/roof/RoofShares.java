package yardloom.water.roof;

import java.util.List;
import java.util.Locale;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Cited;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;

/**
 * The share of the rain that a roof sheds into its gutter, by surface.
 *
 * <p>Sources give ranges; the low end is used, so that a tank is not promised too much.
 */
public final class RoofShares {
  private static final SourceTable SOURCES = SourceTable.beside(RoofShares.class);

  /** For surfaces that no row knows. */
  public static final Cited<Double> ANY_ROOF = new Cited<>(0.75, SOURCES.source("AGRILIFE"));

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

  /** What the plan says of this roof, else that of its surface. */
  public static Cited<Double> of(Plan plan, Element.Roof roof) {
    return plan.attributes().all(OwnShare.KEY).stream()
        .map(Attributes.Entry::value)
        .filter(own -> own.roof().equals(roof.id().name()))
        .findFirst()
        .map(own -> new Cited<>(own.share(), own.source()))
        .orElseGet(() -> of(roof.surface()));
  }

  /** The surfaces that have a row. */
  public static List<String> surfaces() {
    return ROWS.stream().map(Row::surface).toList();
  }

  private static List<Row> read() {
    return DataTable.shipped(RoofShares.class, "roofs.csv").rows().stream()
        .map(
            r ->
                new Row(
                    r.text("surface"), new Cited<>(r.number("share"), SOURCES.cited(r, "source"))))
        .toList();
  }
}
