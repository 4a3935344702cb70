package yardloom.work.labour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.UnitSystem;

/** A household's own hours, as a table. */
class LabourBookTest {
  private static final String HEADER = "task,unit,low,likely,high\n";

  private final Draft draft =
      new Draft(new PlanInfo("test", "Test yard", "", "", "", "", UnitSystem.US, ""));
  private final PlanScope plan = new PlanScope(draft, new SourceRef("plan.groovy", 4, 1));

  private void book(String csv) {
    WorkWords.labourBook(plan, csv, "hours.csv");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "cut edge,ft,0.02,0.04,10001 | OUT_OF_RANGE | at most 10,000; \"cut edge\" has 10001",
        "cut edge,ft,0.05,0.04,0.07 | OUT_OF_RANGE | rises from low to likely to high",
        "cut edge,lb,0.02,0.04,0.07 | UNKNOWN_WORD | 'lb' is no unit for this rate"
      })
  void rowsThatCannotBe_areRefusedWithTheirLine(String row, ProblemCode code, String part) {
    PlanException e = assertThrows(PlanException.class, () -> book(HEADER + row));
    assertEquals(code, e.problems().get(0).code());
    assertEquals(4, e.problems().get(0).place().line());
    assertTrue(e.getMessage().contains("hours.csv:2"), e.getMessage());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  @Test
  void tenThousandHours_areTheMost() {
    book(HEADER + "cut edge,ft,0.02,0.04,10000");
    assertEquals(10_000, draft.attributes().all(LabourRates.KEY).get(0).value().value().high(), 0);
  }

  /** Every row says the same task; that is told only where the rows are not too many to read. */
  @Test
  void moreThanTwoThousandRows_areToldOfBeforeAnyIsRead() {
    String row = "cut edge,ft,0.02,0.04,0.07\n";
    PlanException few = assertThrows(PlanException.class, () -> book(HEADER + row.repeat(2_000)));
    assertEquals(ProblemCode.DUPLICATE, few.problems().get(0).code());
    PlanException many = assertThrows(PlanException.class, () -> book(HEADER + row.repeat(2_001)));
    assertEquals(ProblemCode.LIMIT, many.problems().get(0).code());
    assertTrue(many.getMessage().contains("hours.csv:2002"), many.getMessage());
  }

  @Test
  void columnOfNobodys_isRefusedWithTheNearest() {
    PlanException e =
        assertThrows(
            PlanException.class, () -> book("task,unit,low,likly,high\ncut edge,ft,0.02,0.04,1"));
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("`likely`"), e.getMessage());
  }
}
