package yardloom.water.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** How far pipes are widened (common practice, as printed under the table of lines). */
class PipeSizingTest {
  /** Rows that differ by 13 percent may by 14 with their pipes; 9.5 stay at 10.5, 4 at 10. */
  @Test
  void pipes_addOnePercentAtMost_whereRowsAloneDifferByMoreThanTen() {
    assertEquals(0.14, PipeSizing.goal(0.13), 1e-12);
    assertEquals(0.105, PipeSizing.goal(0.095), 1e-12);
    assertEquals(0.10, PipeSizing.goal(0.04), 1e-12);
  }
}
