package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

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

  /**
   * A user writes what the words of a plan take, in small letters; a wrong word is told with all.
   */
  @Test
  void standing_isReadInSmallLetters_andAWrongOneIsTold() {
    String head = "name,title,publisher,year,locator,standing\n";
    DataTable table = DataTable.parse("d.csv", head + "x,T,P,1,,memory\nx,T,P,1,,seen it\n");
    assertEquals(Source.memory("T", "P", 1, ""), table.rows().get(0).source());
    PlanException e = assertThrows(PlanException.class, () -> table.rows().get(1).source());
    assertEquals(
        "d.csv:3:10: the column `standing` says how the source is known: read, computed, memory,"
            + " common practice, plan; got \"seen it\"",
        e.getMessage().replaceAll(" \\[.*", ""));
  }

  @Test
  void row_isFoundByAColumn_orTheNearestIsTold() {
    DataTable table = DataTable.parse("prices.csv", "item,low\nchips,4\nstraw, 7 \nchips,9\n");
    assertEquals(4, table.row("item", "chips").number("low"), "the first of two");
    assertEquals(7, table.row("item", "straw").maybe("low").orElseThrow());
    PlanException e = assertThrows(PlanException.class, () -> table.row("item", "chip"));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
    assertEquals(
        "'chip' is not in the table prices.csv. Did you mean `chips`?",
        e.problems().get(0).message());
  }

  @Test
  void emptyCell_isNoNumber() {
    DataTable table = DataTable.parse("prices.csv", "item,low\nchips,\n");
    assertTrue(table.rows().get(0).maybe("low").isEmpty());
    PlanException e = assertThrows(PlanException.class, () -> table.rows().get(0).number("low"));
    assertTrue(
        e.getMessage()
            .startsWith("prices.csv:2:7: the column `low` needs a number such as 2.5; it"),
        e.getMessage());
    assertThrows(
        PlanException.class, () -> DataTable.parse("p", "a\nInfinity\n").rows().get(0).number("a"));
  }

  @Test
  void source_isThatOfTheRow_orTheOtherWhereItNamesNone() {
    Source other = Source.memory("Prices", "Merchant", 2026, "shelf");
    String head = "item,title,publisher,year,locator,standing\n";
    DataRow row = DataTable.parse("p", head + "chips,Loads,County,2019,p. 3,READ\n").rows().get(0);
    assertEquals(Source.read("Loads", "County", 2019, "p. 3"), row.sourceOr(other));
    DataRow blank = DataTable.parse("p", head + "chips, ,,0,,READ\n").rows().get(0);
    assertEquals(other, blank.sourceOr(other));
    assertEquals(other, DataTable.parse("p", "item\nchips\n").rows().get(0).sourceOr(other));
    assertEquals("Prices, Merchant, 2026, shelf (from memory, unverified)", other.cite());
    assertEquals(
        "Loads, County, 2019, p. 3", Source.computed("Loads", "County", 2019, "p. 3").cite());
  }

  @Test
  void shippedRows_areReadByTheNamesOfTheHead() {
    List<SortedMap<String, String>> rows =
        CsvReader.shipped(DataTableTest.class, "shipped-rows.csv");
    assertEquals(2, rows.size());
    assertEquals("12", rows.get(0).get("feet"));
    assertEquals("round, tall", rows.get(1).get("form"));
    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () -> CsvReader.shipped(DataTableTest.class, "none.csv"))
            .getMessage()
            .contains("there is no none.csv beside yardloom.kernel.table.DataTableTest"));
    assertEquals(
        "line 3 of shipped-ragged.csv has not as many fields as the first line",
        assertThrows(
                IllegalArgumentException.class,
                () -> CsvReader.shipped(DataTableTest.class, "shipped-ragged.csv"))
            .getMessage());
  }
}
