package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

class DataTableTest {
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
}
