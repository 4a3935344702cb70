package yardloom.materials.sourcing;

import java.util.List;
import yardloom.facts.mulch.ItemSource;
import yardloom.kernel.table.DataTable;

/** Where materials come from, what to ask for and what to refuse. */
public final class SourcingData {
  private static final List<ItemSource> ROWS =
      DataTable.shipped(SourcingData.class, "sourcing.csv").rows().stream()
          .map(
              r ->
                  new ItemSource(
                      r.text("material"),
                      r.text("from"),
                      r.text("cost"),
                      r.text("ask"),
                      r.text("refuse"),
                      (int) r.number("lead_days"),
                      r.source()))
          .toList();

  private SourcingData() {}

  /** The shipped rows. */
  public static List<ItemSource> all() {
    return ROWS;
  }
}
