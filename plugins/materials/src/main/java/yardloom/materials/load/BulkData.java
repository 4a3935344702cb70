package yardloom.materials.load;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yardloom.facts.BillLine;
import yardloom.facts.region.Spread;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** Densities and load sizes of bulk materials, each low, likely and high with its source. */
public final class BulkData {
  private static final DataTable DENSITY = DataTable.shipped(BulkData.class, "bulk-density.csv");
  private static final DataTable ITEM = DataTable.shipped(BulkData.class, "bulk-item.csv");
  private static final DataTable LOAD = DataTable.shipped(BulkData.class, "load-size.csv");

  private BulkData() {}

  /**
   * The bulk material that an item of the bill is, without what stands behind its comma; none for
   * what comes in its own truck, as concrete does, or in pieces.
   */
  static Optional<String> materialOf(String item) {
    return ITEM.rows().stream()
        .filter(row -> row.text("item").equals(BillLine.stem(item)))
        .map(row -> row.text("material"))
        .findFirst();
  }

  /** Whether tables and bill know that name without a word of the plan. */
  static boolean isShipped(String name) {
    return Stream.concat(
            DENSITY.rows().stream().map(r -> r.text("material")),
            ITEM.rows().stream().map(r -> r.text("item")))
        .anyMatch(name::equalsIgnoreCase);
  }

  /** Pounds per cubic yard as delivered. */
  public static Spread poundsPerCubicYard(String material) {
    return spread(DENSITY.row("material", material), "lb_yd3", "moisture and packing");
  }

  /** Cubic yards that one truck brings. */
  public static Spread cubicYardsPerLoad(String material) {
    return spread(LOAD.row("material", material), "yd3", "truck size");
  }

  /** The bulk materials, with what a cubic yard weighs and a truck brings. */
  public static Catalogue catalogue() {
    return new Catalogue(
        "materials",
        "Bulk materials, low, likely and high",
        DENSITY.rows().stream()
            .map(
                row ->
                    new Catalogue.Row(
                        row.text("material"),
                        Map.of(
                            "weight", three(row, "lb_yd3") + " lb/cu yd",
                            "load", load(row.text("material")),
                            "source", row.source().cite())))
            .toList());
  }

  /** What comes by the piece has no load. */
  private static String load(String material) {
    return LOAD.rows().stream()
        .filter(row -> row.text("material").equals(material))
        .findFirst()
        .map(row -> three(row, "yd3") + " cu yd")
        .orElse("");
  }

  private static String three(DataRow row, String unit) {
    return row.text("low_" + unit)
        + ", "
        + row.text("likely_" + unit)
        + ", "
        + row.text("high_" + unit);
  }

  private static Spread spread(DataRow row, String unit, String cause) {
    return new Spread(
        row.number("low_" + unit),
        row.number("likely_" + unit),
        row.number("high_" + unit),
        cause,
        row.source());
  }
}
