package yardloom.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.materials.data.DataRow;
import yardloom.materials.data.DataTable;

class DataTablesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "available-water.csv",
        "bulk-density.csv",
        "feedstock.csv",
        "labour.csv",
        "lime-sulfur.csv",
        "lime-to-ph65.csv",
        "load-size.csv",
        "local-rule.csv",
        "lumber-size.csv",
        "price-demo.csv",
        "sourcing.csv",
        "stack-recipe.csv",
        "tough-weed.csv",
        "water-per-foot.csv"
      })
  void everyRow_namesItsSource(String name) {
    DataTable table = DataTable.shipped(name);
    assertFalse(table.rows().isEmpty());
    for (DataRow row : table.rows()) {
      assertFalse(row.source().cite().isBlank(), row.place().toString());
    }
  }

  @Test
  void userTable_badNumber_namesFileLineAndColumn() {
    DataTable table = DataTable.parse("prices.csv", "item,low\nchips,cheap\n");
    PlanException e = assertThrows(PlanException.class, () -> table.rows().get(0).number("low"));
    assertEquals(ProblemCode.WRONG_TYPE, e.problems().get(0).code());
    assertTrue(e.getMessage().startsWith("prices.csv:2:7: the column `low`"), e.getMessage());
  }

  @Test
  void userTable_rowWithoutSource_isRefused() {
    DataTable table =
        DataTable.parse("d.csv", "name,title,publisher,year,locator,standing\nx,,,0,,READ\n");
    assertThrows(PlanException.class, () -> table.rows().get(0).source());
  }

  @Test
  void row_misspelt_suggestsTheNearest() {
    PlanException e =
        assertThrows(
            PlanException.class, () -> DataTable.shipped("feedstock.csv").row("name", "staw"));
    assertTrue(e.getMessage().contains("Did you mean `straw`?"), e.getMessage());
  }

  @ParameterizedTest
  @CsvSource({"blackberry", "bindweed", "morning glory", "quackgrass"})
  void toughWeeds_extensionList_isComplete(String weed) {
    // Soil check M28, Oregon State University Extension.
    var row = DataTable.shipped("tough-weed.csv").row("weed", weed);
    assertTrue(row.text("advice").contains("first") || row.text("advice").contains("before"));
  }

  @Test
  void recipes_overHundredSquareFeet_holdPublishedVolumes() {
    // Soil check M29: compost 4 in in all 1.235 yd³; chips 4 in 1.235 yd³.
    double compostIn = 0;
    double chipsIn = 0;
    for (DataRow row : DataTable.shipped("stack-recipe.csv").rows()) {
      if (row.text("recipe").equals("compost and chips")) {
        compostIn += row.text("layer").equals("compost") ? row.number("depth_in") : 0;
        chipsIn += row.text("layer").equals("wood chips") ? row.number("depth_in") : 0;
      }
    }
    Area bed = Area.squareFeet(100);
    assertEquals(1.235, bed.deep(Length.inches(compostIn)).cubicYards(), 0.001);
    assertEquals(1.235, bed.deep(Length.inches(chipsIn)).cubicYards(), 0.001);
  }
}
