package yardloom.materials.data;

import java.util.List;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataTable;

/** Where materials come from, what to ask for and what to refuse. */
public final class SourcingData {
  private static final List<Row> ROWS =
      DataTable.shipped(SourcingData.class, "sourcing.csv").rows().stream()
          .map(
              r ->
                  new Row(
                      r.text("material"),
                      r.text("from"),
                      r.text("cost"),
                      r.text("ask"),
                      r.text("refuse"),
                      (int) r.number("lead_days"),
                      r.source()))
          .toList();

  private SourcingData() {}

  /**
   * One way to come by a material.
   *
   * @param leadDays how long ahead to ask
   */
  public record Row(
      String material,
      String from,
      String cost,
      String ask,
      String refuse,
      int leadDays,
      Source source) {}

  /** The ways for one item of the bill. */
  public static List<Row> of(String item) {
    return ROWS.stream().filter(r -> r.material().equals(item)).toList();
  }

  /** The longest lead of an item; a week where none is known. */
  public static int leadDays(String item) {
    return of(item).stream().mapToInt(Row::leadDays).max().orElse(7);
  }
}
