package yardloom.soil.texture;

import java.util.Optional;
import yardloom.kernel.table.DataTable;
import yardloom.soil.texture.formula.Range;
import yardloom.soil.texture.formula.TextureClass;

/** Available water by texture and organic matter, as the soil survey tabulates it. */
public final class SoilWaterData {
  private static final DataTable TABLE =
      DataTable.shipped(SoilWaterData.class, "available-water.csv");

  private SoilWaterData() {}

  /**
   * Metres of available water per metre of fine earth; empty for silt, which the table lacks.
   *
   * <p>Organic matter classes: below 1.5 %, 1.5 to 5 %, above 5 %.
   */
  public static Optional<Range> availableShare(TextureClass texture, double organicPercent) {
    int om = organicPercent < 1.5 ? 1 : organicPercent <= 5 ? 2 : 3;
    return TABLE.rows().stream()
        .filter(r -> r.text("texture").equals(texture.title()))
        .findFirst()
        .map(r -> new Range(r.number("low_om" + om), r.number("high_om" + om), r.source()));
  }
}
