package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

class SourceTableTest {
  private static final SourceTable SOURCES = SourceTable.beside(SourceTableTest.class);

  @Test
  void knownCode_givesItsSource() {
    Source expected = Source.read("Beans, and peas", "A press", 1998, "page 3");

    assertEquals(expected, SOURCES.source("A"));
    DataRow row = DataTable.parse("peas.csv", "name,source\npea,A").rows().get(0);
    assertEquals(expected, SOURCES.cited(row, "source"));
  }

  @Test
  void unknownCode_isRefusedAtItsCell() {
    DataRow row = DataTable.parse("peas.csv", "name,source\npea,A\nbean,AA").rows().get(1);

    PlanException refused = assertThrows(PlanException.class, () -> SOURCES.cited(row, "source"));

    assertEquals(ProblemCode.UNKNOWN_WORD, refused.problems().get(0).code());
    assertEquals(new SourceRef("peas.csv", 3, 6), refused.problems().get(0).place());
    assertThrows(IllegalStateException.class, () -> SOURCES.source("AA"));
  }

  @Test
  void missingTable_namesItsOwnerAndItself() {
    IllegalStateException refused =
        assertThrows(
            IllegalStateException.class,
            () -> DataTable.shipped(SourceTableTest.class, "nowhere.csv"));

    assertEquals(
        "yardloom.kernel.table.SourceTableTest lacks its table nowhere.csv", refused.getMessage());
  }
}
