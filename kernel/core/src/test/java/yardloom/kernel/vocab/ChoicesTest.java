package yardloom.kernel.vocab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

class ChoicesTest {
  private enum Side {
    FRONT,
    CORNER_SIDE
  }

  @Test
  void values_areReadAsTheyAreWritten() {
    assertEquals("corner side", Choices.text(Side.CORNER_SIDE));
    assertEquals(List.of("front", "corner side"), Choices.of(Side.class));
    assertEquals(Side.CORNER_SIDE, Choices.parse(Side.class, "corner side"));
    assertEquals(Side.FRONT, Choices.parse(Side.class, null, Side.FRONT));
    assertEquals(Side.CORNER_SIDE, Choices.parse(Side.class, "corner side", Side.FRONT));
  }

  @Test
  void anotherText_isRefusedWithAllThatAreAllowed() {
    PlanException refused =
        assertThrows(PlanException.class, () -> Choices.parse(Side.class, "corner_side"));
    assertEquals(ProblemCode.UNKNOWN_WORD, refused.problems().get(0).code());
    assertTrue(
        refused.getMessage().contains("'corner_side' is not one of front, corner side."),
        refused.getMessage());
  }

  @Test
  void days_areMonthAndDay_andARealOne() {
    SourceRef here = new SourceRef("p.groovy", 3, 1);
    assertEquals(MonthDay.of(4, 15), YearDays.read(here, "04-15"));
    PlanException refused = assertThrows(PlanException.class, () -> YearDays.read(here, "04-31"));
    assertEquals(ProblemCode.WRONG_TYPE, refused.problems().get(0).code());
    assertTrue(refused.getMessage().contains("such as '04-15'"), refused.getMessage());
  }
}
