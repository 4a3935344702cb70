package yardloom.work;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.facts.BillGroup;
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

  /** A price of a group that no bill has would never be found. */
  @Test
  void pricesOfGroups_nameAGroupOfTheBill() {
    List<String> groups = Arrays.stream(BillGroup.values()).map(g -> "any " + g.title()).toList();
    List<String> any =
        DataTable.shipped(DataTable.class, "/yardloom/work/cost/price-demo.csv").rows().stream()
            .map(r -> r.text("item"))
            .filter(i -> i.startsWith("any "))
            .toList();
    assertFalse(any.isEmpty());
    any.forEach(i -> assertTrue(groups.contains(i), i));
  }
}
