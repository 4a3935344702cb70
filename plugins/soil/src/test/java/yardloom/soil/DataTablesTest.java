package yardloom.soil;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

class DataTablesTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/yardloom/soil/texture/available-water.csv",
        "/yardloom/soil/amendment/nitrogen-by-crop.csv",
        "/yardloom/soil/amendment/formula/lime-to-ph65.csv",
        "/yardloom/soil/texture/basic-intake.csv",
        "/yardloom/soil/compost/formula/feedstock.csv",
        "/yardloom/soil/region/local-rule.csv"
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
                DataTable.shipped(
                        yardloom.soil.compost.formula.FeedstockData.class, "feedstock.csv")
                    .row("name", "staw"));
    assertTrue(e.getMessage().contains("Did you mean `straw`?"), e.getMessage());
  }
}
