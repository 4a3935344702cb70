package yardloom.water.data;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** The tables of climates, rows by column name. */
final class WaterTables {
  private WaterTables() {}

  static List<Map<String, String>> rows(String table) {
    return DataTable.shipped(WaterTables.class, table).rows().stream().map(DataRow::cells).toList();
  }

  /** Sources by the code that other tables use. */
  static Map<String, Source> sources() {
    return DataTable.shipped(WaterTables.class, "sources.csv").rows().stream()
        .collect(Collectors.toUnmodifiableMap(r -> r.text("code"), DataRow::source));
  }
}
