package yardloom.kernel.scope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/** What values a yard allows, and what is said of others. A foot is 0.3048 m. */
class LimitsTest {
  private static final Length MOST = Length.metres(3);

  private static void refused(String says, Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertEquals(ProblemCode.OUT_OF_RANGE, refused.problems().get(0).code());
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  @Test
  void lengths_mayBeAsMuchAsTheLimit_andNoMore() {
    assertEquals(MOST, Limits.positive("overhang", MOST, MOST));
    assertEquals(MOST, Limits.zeroOrMore("overhang", MOST, MOST));
    assertEquals(Length.ZERO, Limits.zeroOrMore("overhang", Length.ZERO, MOST));
    String tooMuch = "overhang must be at most 3.00 m (9.84 ft), got 3.05 m (10.00 ft)";
    refused(tooMuch, () -> Limits.positive("overhang", Length.feet(10), MOST));
    refused(tooMuch, () -> Limits.zeroOrMore("overhang", Length.feet(10), MOST));
    refused(tooMuch, () -> Limits.atMost("overhang", Length.feet(10), MOST));
  }

  @Test
  void lengths_belowTheirLeast_areRefused() {
    refused(
        "path must be more than zero, got 0.00 m (0.00 ft)",
        () -> Limits.positive("path", Length.ZERO, MOST));
    refused(
        "path cannot be negative, got -0.30 m (-1.00 ft)",
        () -> Limits.zeroOrMore("path", Length.feet(-1), MOST));
  }

  @Test
  void shares_lieBetweenNothingAndAll() {
    assertEquals(0, Limits.share("screen", 0));
    assertEquals(1, Limits.share("screen", 1));
    assertEquals(0.4, Limits.share("screen", 0.4));
    refused(
        "screen is a share between 0 (solid) and 1 (open), got 1.1",
        () -> Limits.share("screen", 1.1));
    refused("got -0.1", () -> Limits.share("screen", -0.1));
    refused("got NaN", () -> Limits.share("screen", Double.NaN));
  }

  @Test
  void whatIsNotSaid_hasItsFallback() {
    assertEquals(4, Limits.or(4, 7));
    assertEquals(7, Limits.or(null, 7));
  }
}
