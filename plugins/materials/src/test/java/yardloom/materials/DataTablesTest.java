package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

class DataTablesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/yardloom/materials/data/available-water.csv",
        "/yardloom/materials/data/bulk-density.csv",
        "/yardloom/materials/data/feedstock.csv",
        "/yardloom/materials/data/labour.csv",
        "/yardloom/materials/calc/lime-sulfur.csv",
        "/yardloom/materials/data/load-size.csv",
        "/yardloom/materials/work/local-rule.csv",
        "/yardloom/materials/calc/lumber-size.csv",
        "/yardloom/materials/data/price-demo.csv",
        "/yardloom/materials/data/sourcing.csv",
        "/yardloom/materials/data/tough-weed.csv",
        "/yardloom/materials/data/water-per-foot.csv"
      })
  void everyRow_namesItsSource(String name) {
    DataTable table = DataTable.shipped(DataTable.class, name);
    assertFalse(table.rows().isEmpty());
    for (DataRow row : table.rows()) {
      assertFalse(row.source().cite().isBlank(), row.place().toString());
    }
  }

  @Test
  void row_misspelt_suggestsTheNearest() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                DataTable.shipped(yardloom.materials.data.FeedstockData.class, "feedstock.csv")
                    .row("name", "staw"));
    assertTrue(e.getMessage().contains("Did you mean `straw`?"), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"blackberry", "bindweed", "morning glory", "quackgrass"})
  void toughWeeds_extensionList_isComplete(String weed) {
    // Soil check M28, Oregon State University Extension.
    var row =
        DataTable.shipped(yardloom.materials.data.WeedData.class, "tough-weed.csv")
            .row("weed", weed);
    assertTrue(row.text("advice").contains("first") || row.text("advice").contains("before"));
  }
}
