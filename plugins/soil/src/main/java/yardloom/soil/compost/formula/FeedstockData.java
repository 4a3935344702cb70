package yardloom.soil.compost.formula;

import java.util.List;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/**
 * Carbon, nitrogen, moisture and bulk density of what goes on a compost heap.
 *
 * <p>References: the rows of the shipped table {@code feedstock.csv}, each with its source.
 */
public final class FeedstockData {
  private static final DataTable TABLE = DataTable.shipped(FeedstockData.class, "feedstock.csv");

  private FeedstockData() {}

  /**
   * One material.
   *
   * @param nitrogen percent of dry matter
   * @param ratio carbon to nitrogen
   * @param moisture percent of wet mass
   */
  public record Feedstock(
      String name,
      double nitrogen,
      double ratio,
      double moisture,
      double poundsPerCubicYard,
      Source source) {}

  public static Feedstock of(String name) {
    DataRow row = TABLE.row("name", name);
    return new Feedstock(
        name,
        row.number("nitrogen"),
        row.number("ratio"),
        row.number("moisture"),
        row.number("lb_yd3"),
        row.source());
  }
}
