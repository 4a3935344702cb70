package yardloom.kernel.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
}
