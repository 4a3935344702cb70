package yardloom.materials.goods.formula;

import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;

/**
 * Softwood lumber: nominal names, dressed sizes, board feet.
 *
 * <p>A board foot counts nominal inches, thickness × width × feet / 12; counting the dressed size
 * is not the trade's board foot. Unknown names are UNKNOWN_WORD with the nearest.
 *
 * <p>References: [1] public lumber tables (vterrain.org, sawdustmaking.com); the standard itself is
 * ALSC PS 20 (from memory).
 */
public final class Lumber {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read("Lumber size table", "sawdustmaking.com and vterrain.org", 0, "");

  private static final DataTable SIZES = DataTable.shipped(Lumber.class, "lumber-size.csv");

  private Lumber() {}

  /**
   * A size as sold.
   *
   * @param name such as {@code 2x6}
   */
  public record Size(
      String name,
      double nominalThicknessIn,
      double nominalWidthIn,
      Length thickness,
      Length width) {

    /** Board feet in a length. */
    public double boardFeet(Length length) {
      return nominalThicknessIn * nominalWidthIn * length.feet() / 12;
    }
  }

  public static Size size(String name) {
    DataRow row = SIZES.row("name", name);
    return new Size(
        name,
        row.number("nominal_thickness_in"),
        row.number("nominal_width_in"),
        Length.inches(row.number("thickness_in")),
        Length.inches(row.number("width_in")));
  }
}
