package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

class DataTablesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/yardloom/materials/load/bulk-density.csv",
        "/yardloom/materials/load/load-size.csv",
        "/yardloom/materials/sourcing/sourcing.csv",
        "/yardloom/materials/mulch/tough-weed.csv",
        "/yardloom/materials/goods/formula/lumber-size.csv"
      })
  void everyRow_namesItsSource(String name) {
    DataTable table = DataTable.shipped(DataTable.class, name);
    assertFalse(table.rows().isEmpty());
    for (DataRow row : table.rows()) {
      assertFalse(row.source().cite().isBlank(), row.place().toString());
    }
  }

  @ParameterizedTest
  @CsvSource({"blackberry", "bindweed", "morning glory", "quackgrass"})
  void toughWeeds_extensionList_isComplete(String weed) {
    // Soil check M28, Oregon State University Extension.
    var row =
        DataTable.shipped(yardloom.materials.mulch.WeedData.class, "tough-weed.csv")
            .row("weed", weed);
    assertTrue(row.text("advice").contains("first") || row.text("advice").contains("before"));
  }
}
