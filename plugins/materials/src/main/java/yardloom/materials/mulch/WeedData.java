package yardloom.materials.mulch;

import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;

/** Weeds of concern under sheet mulch. */
public final class WeedData {
  private static final DataTable TABLE = DataTable.shipped(WeedData.class, "tough-weed.csv");
  private static final Source EXTRA =
      Source.memory(
          "Two layers of cardboard in problem areas (read in a gardening column); inches of chips"
              + " over tough weeds",
          "recalled from gardening practice",
          0,
          "");

  private WeedData() {}

  /** The weed of that name; UNKNOWN_WORD with the nearest if it is not listed. */
  public static Weed of(String name) {
    DataRow row = TABLE.row("weed", name);
    return new Weed(
        name,
        row.text("advice"),
        (int) row.number("layers"),
        Length.inches(row.number("extra_in")),
        row.source(),
        EXTRA);
  }
}
