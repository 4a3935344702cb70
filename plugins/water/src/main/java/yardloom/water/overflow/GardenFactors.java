package yardloom.water.overflow;

import yardloom.facts.SoilProfile;
import yardloom.kernel.source.Cited;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** Size factors of rain gardens by soil and depth, for catchments within 30 ft. */
public final class GardenFactors {
  private static final DataTable TABLE =
      DataTable.shipped(GardenFactors.class, "garden-factors.csv");

  private GardenFactors() {}

  /** The factor for the depth that a slope in percent allows, 0 to 12. */
  public static Cited<Double> of(SoilProfile soil, double slopePercent) {
    String column = slopePercent <= 4 ? "shallow" : slopePercent <= 7 ? "middle" : "deep";
    DataRow row = TABLE.row("soil", kind(soil.texture()));
    return new Cited<>(row.number(column), row.source());
  }

  /** Clays and clay loams are clayey, sands and sandy loams sandy, the others silty. */
  private static String kind(String texture) {
    if (texture.contains("clay")) {
      return "clayey";
    }
    return texture.contains("sand") ? "sandy" : "silty";
  }
}
