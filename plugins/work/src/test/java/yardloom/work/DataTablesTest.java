package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

class DataTablesTest {
  @ParameterizedTest
  @ValueSource(strings = {"/yardloom/work/labour/labour.csv", "/yardloom/work/cost/price-demo.csv"})
  void everyRow_namesItsSource(String name) {
    DataTable table = DataTable.shipped(DataTable.class, name);
    assertFalse(table.rows().isEmpty());
    for (DataRow row : table.rows()) {
      assertFalse(row.source().cite().isBlank(), row.place().toString());
    }
  }
}
