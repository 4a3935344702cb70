package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people see when a plan or a command is wrong. */
class BrokenPlanTest {
  private static final String LOT =
      "lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft, 60.ft)])\n";

  @TempDir private Path dir;

  private Run check(String script) throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), script);
    Run run = Run.in(dir, "draw", "plan.groovy");
    assertFalse((run.out() + run.err()).contains("Exception"), run.err());
    return run;
  }

  private void assertProblem(Run run, int code, String... parts) {
    assertEquals(code, run.code(), run.out() + run.err());
    for (String part : parts) {
      assertTrue(
          (run.out() + run.err()).contains(part), part + "\nnot in\n" + run.out() + run.err());
    }
  }

  @Test
  void unknownWord_namesTheNearest() throws IOException {
    Run run = check(LOT + "bed('a', rect(1.ft, 1.ft, 4.ft, 8.ft)) {\n  plnt 'kale'\n}\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:3:3: ", "`plnt`", "Did you mean `plant`?");
  }

  @Test
  void wrongUnit_saysWhatIsNeeded() throws IOException {
    Run run = check(LOT + "bed('a', rect(1.ft, 1.ft, 4.gpm, 8.ft))\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:2:", "length", "flow");
  }

  @Test
  void bareNumber_saysWhatIsNeeded() throws IOException {
    Run run = check(LOT + "bed('a', rect(1.ft, 1.ft, 4, 8.ft))\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:2:", "length", "4.ft");
  }

  @Test
  void missingOption_isNamed() throws IOException {
    Run run = check(LOT + "building 'house', rect(1.ft, 1.ft, 4.ft, 8.ft)\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:2:1: ", "`eaves`");
  }

  @Test
  void bedOutsideTheLot_isAFindingWithItsPlace() throws IOException {
    Run run = check(LOT + "bed('a', rect(38.ft, 1.ft, 4.ft, 8.ft))\n");
    assertProblem(run, ExitCode.FINDINGS, "plan.groovy:2:1: ", "bed \"a\"", "site.bed-outside-lot");
  }

  @Test
  void selfCrossingLot_saysWhere() throws IOException {
    Run run =
        check(
            "lot([point(0.ft, 0.ft), point(40.ft, 60.ft), point(40.ft, 0.ft), point(0.ft,"
                + " 60.ft)])\n");
    assertProblem(
        run, ExitCode.PLAN, "plan.groovy:1:1: ", "crosses", "(20.00 ft, 30.00 ft)", "[BAD_SHAPE]");
  }

  /** Each block ends at its first mistake, the script goes on behind it. */
  @Test
  void mistakesThatShowInBlocks_areToldTogether() throws IOException {
    Run run =
        check(
            LOT.strip()
                + " { side 'sout', role: 'front' }\n"
                + "bed('a', rect(1.ft, 1.ft, 4.ft, 8.ft), use: 'annual') { plant 'tomatoe' }\n"
                + "bed('b', rect(9.ft, 1.ft, 4.ft, 8.ft), use: 'annual') {\n"
                + "  drip emitter: 500.gph, spacing: 12.inch\n"
                + "  plant 'kael'\n"
                + "}\n");
    assertProblem(
        run,
        ExitCode.PLAN,
        "plan.groovy:1:89: the lot has no side 'sout'",
        "plan.groovy:2:57: the catalogue has no plant 'tomatoe'",
        "plan.groovy:4:3: a drip outlet gives between",
        "got 500.00 gph (1892.7 L/h)",
        "3 problems; nothing was written");
  }

  /** What a word lacks because its own block failed is not told again. */
  @Test
  void wordWhoseBlockFailed_isNotToldAgain() throws IOException {
    Run run =
        check(
            "def a = point(0.ft, 0.ft)\n"
                + "def x = tied('x', near: point(1.ft, 2.ft)) { tape a, -5.ft, name: 'q' }\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:2:46: ", "1 problem; nothing was written");
  }

  /** A loop may make any number of mistakes; a page of them is enough. */
  @Test
  void endlessMistakes_endTheScript() throws IOException {
    Run run =
        check(
            LOT
                + "for (i in 1..500) bed(\"b${i}\", rect(i * 1.ft, 1.ft, 1.ft, 1.ft), use:"
                + " 'annual') { plant 'x' }\n");
    assertProblem(run, ExitCode.PLAN, "20 problems; nothing was written");
  }

  @Test
  void severalMistakes_areAllTold() throws IOException {
    Run run = check("lott()\nbed('a', rect(1.ft, 1.ft, 4, 8.ft))\npaht 'x'\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:1:1", "plan.groovy:2:", "plan.groovy:3:1");
  }

  @Test
  void unknownPlant_namesTheNearest() throws IOException {
    Run run = check(LOT + "bed('a', rect(1.ft, 1.ft, 4.ft, 8.ft)) { plant 'tomatoe' }\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:2:", "tomato");
  }

  @Test
  void negativeSize_isRefusedWithItsValue() throws IOException {
    Run run = check(LOT + "bed('a', rect(1.ft, 1.ft, -4.ft, 8.ft))\n");
    assertProblem(run, ExitCode.PLAN, "plan.groovy:2:10: ", "more than zero", "-4.00 ft");
  }

  @Test
  void missingFile_isNotAFault() {
    Run run = Run.in(dir, "draw", "nothing.groovy");
    assertProblem(run, ExitCode.PLAN, "nothing.groovy", "[FILE]");
  }

  @Test
  void emptyFile_saysThatALotIsMissing() throws IOException {
    assertProblem(check(""), ExitCode.PLAN, "give the plan a lot", "[MISSING_OPTION]");
  }

  @Test
  void unknownOption_isWrongUse() throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), LOT);
    assertProblem(Run.in(dir, "draw", "plan.groovy", "--oot", "x"), ExitCode.USE, "--oot", "[USE]");
    assertProblem(Run.in(dir, "drwa"), ExitCode.USE, "drwa");
    assertProblem(Run.in(dir), ExitCode.USE, "draw");
  }

  @Test
  void unknownSheetSize_namesTheSizes() throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), LOT);
    assertProblem(Run.in(dir, "draw", "plan.groovy", "--sheet", "arch-z"), ExitCode.USE, "ARCH C");
  }

  @Test
  void unknownParameter_isTold() throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), LOT + "param 'bedWidth', 4.ft, 'width'\n");
    assertProblem(
        Run.in(dir, "draw", "plan.groovy", "--set", "bedWith=3ft"),
        ExitCode.PLAN,
        "bedWith",
        "bedWidth");
  }
}
