package yardloom.materials.load;

import yardloom.facts.region.Spread;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** Densities and load sizes of bulk materials, each low, likely and high with its source. */
public final class BulkData {
  private static final DataTable DENSITY = DataTable.shipped(BulkData.class, "bulk-density.csv");
  private static final DataTable LOAD = DataTable.shipped(BulkData.class, "load-size.csv");

  private BulkData() {}

  /** Pounds per cubic yard as delivered. */
  public static Spread poundsPerCubicYard(String material) {
    return spread(DENSITY.row("material", material), "lb_yd3", "moisture and packing");
  }

  /** Cubic yards that one truck brings. */
  public static Spread cubicYardsPerLoad(String material) {
    return spread(LOAD.row("material", material), "yd3", "truck size");
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
