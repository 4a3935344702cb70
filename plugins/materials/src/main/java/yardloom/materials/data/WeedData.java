package yardloom.materials.data;

import yardloom.materials.model.Weed;

/** Weeds of concern under sheet mulch. */
public final class WeedData {
  private static final DataTable TABLE = DataTable.shipped("tough-weed.csv");

  private WeedData() {}

  /** The weed of that name; UNKNOWN_WORD with the nearest if it is not listed. */
  public static Weed of(String name) {
    DataRow row = TABLE.row("weed", name);
    return new Weed(name, row.text("advice"), row.source());
  }
}
