package yardloom.soil.amendment;

import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Mass;

/** Nitrogen that vegetables take in a season, where no soil test says otherwise. */
public final class NitrogenData {
  private static final DataTable TABLE =
      DataTable.shipped(NitrogenData.class, "nitrogen-by-crop.csv");
  private static final String OTHERS = "any vegetable";

  private NitrogenData() {}

  /**
   * The rate of a crop; of one that is not listed, the general rate.
   *
   * @param per1000SquareFeet nitrogen for 1000 sq ft and season
   */
  public record Rate(Mass per1000SquareFeet, Source source) {}

  public static Rate of(String crop) {
    DataRow row =
        TABLE.rows().stream()
            .filter(r -> r.text("crop").equals(crop))
            .findFirst()
            .orElseGet(() -> TABLE.row("crop", OTHERS));
    return new Rate(Mass.pounds(row.number("lb_1000sqft")), row.source());
  }
}
