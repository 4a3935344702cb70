package yardloom.kernel.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemTest {
  private static String shown(String message) {
    return new Problem(ProblemCode.BAD_SHAPE, SourceRef.NONE, message).message();
  }

  @Test
  void message_longName_isCut() {
    String name = "a b ".repeat(200);
    String cut = name.substring(0, 60) + "…";
    assertEquals("bed \"" + cut + "\" lies outside", shown("bed \"" + name + "\" lies outside"));
    assertEquals("no side '" + cut + "'; it has", shown("no side '" + name + "'; it has"));
    assertEquals("no `" + "x".repeat(60) + "…`", shown("no `" + "x".repeat(5000) + "`"));
  }

  @Test
  void message_longWord_isCut() {
    assertEquals("unknown " + "x".repeat(60) + "…", shown("unknown " + "x".repeat(5000)));
  }

  @Test
  void message_longNumber_isShownByPowersOfTen() {
    assertEquals("got 1.00e+300 m", shown("got 1" + "0".repeat(300) + " m"));
    assertEquals("got 3.28e+299.", shown("got 328" + "0".repeat(297) + ".55."));
  }

  @Test
  void message_withNothingOverlong_isKept() {
    String path =
        "the file \"/a/long/folder/name/that/goes/on/and/on/and/on/and/on/and/on/plan.csv\" is missing";
    assertEquals(path, shown(path));
    String apostrophes =
        "the lot's setbacks leave nothing of it; the street's own 7.5 m and the neighbours' 3 m";
    assertEquals(apostrophes, shown(apostrophes));
    String many =
        "a bed has no `colour`. It has: `use`, `depth`, `spacing`, `north`, `south`, `east`, `west`";
    assertEquals(many, shown(many));
    String digits =
        "it takes 123456789012 of them, 0.123456789012 each, on any day of the year 2026";
    assertEquals(digits, shown(digits));
  }

  @Test
  void problems_areSortedByPlace_andTakeAPlaceOnlyIfTheyHaveNone() {
    Problem late = new Problem(ProblemCode.SYNTAX, new SourceRef("a", 9, 1), "late");
    Problem early = new Problem(ProblemCode.SYNTAX, new SourceRef("a", 2, 1), "early");
    Problem nowhere = new Problem(ProblemCode.LIMIT, SourceRef.NONE, "nowhere");
    PlanException all = new PlanException(List.of(late, early, nowhere));
    assertEquals(List.of(nowhere, early, late), all.problems());
    SourceRef word = new SourceRef("a", 5, 3);
    PlanException placed = all.at(word);
    assertEquals(
        List.of("a:2:1: early [SYNTAX]", "a:5:3: nowhere [LIMIT]", "a:9:1: late [SYNTAX]"),
        placed.problems().stream().map(Problem::toString).toList());
    assertSame(all, placed.getCause());
  }

  @Test
  void problem_inAText_isToldAtItsWord() {
    SourceRef word = new SourceRef("yard.groovy", 5, 3);
    SourceRef cell = new SourceRef("prices.csv", 2, 7);
    assertEquals(
        "yard.groovy:5:3: prices.csv:2:7: no number [WRONG_TYPE]",
        new PlanException(ProblemCode.WRONG_TYPE, cell, "no number").inTextOf(word).getMessage());
    assertEquals(
        "yard.groovy:5:3: no number [WRONG_TYPE]",
        new PlanException(ProblemCode.WRONG_TYPE, "no number").inTextOf(word).getMessage());
  }
}
