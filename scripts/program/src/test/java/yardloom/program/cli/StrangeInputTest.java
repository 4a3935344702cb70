package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** Files, names and command lines as they come from other editors, machines and moods. */
class StrangeInputTest {
  private static final String LOT =
      "lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft, 60.ft)])\n";

  @TempDir private Path dir;

  private Run run(String script, String... more) throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), script);
    return more.length == 0 ? Run.in(dir, "check", "plan.groovy") : Run.in(dir, more);
  }

  private static void told(Run run, int code, String part) {
    assertEquals(code, run.code(), run.out() + run.err());
    assertTrue((run.out() + run.err()).contains(part), part + "\nnot in\n" + run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @Test
  void byteOrderMark_isPassedOver() throws IOException {
    told(run("\uFEFF" + LOT), ExitCode.FINE, "plan.groovy");
    told(run("\uFEFFbedd 'x'\n"), ExitCode.PLAN, "plan.groovy:1:1: ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void lineEnds_ofAnySystem_giveTheSamePlaces(String end) throws IOException {
    told(run((LOT + "\n  bedd 'x'\n").replace("\n", end)), ExitCode.PLAN, "plan.groovy:3:3: ");
  }

  @Test
  void folderAsPlan_isToldToBeOne() {
    told(Run.in(dir, "draw", "."), ExitCode.PLAN, "this is a folder");
  }

  @Test
  void halfASign_isRefusedBeforeAnythingIsWritten() throws IOException {
    String escaped = "bed 'x\\uD83D', rect(1.ft, 1.ft, 4.ft, 8.ft)\n";
    told(run(LOT + escaped), ExitCode.PLAN, "half a sign");
    String taken = "bed '\uD83C\uDF3F'[0], rect(1.ft, 1.ft, 4.ft, 8.ft)\n";
    told(run(LOT + taken), ExitCode.PLAN, "half a sign");
  }

  @ParameterizedTest
  @ValueSource(strings = {"file", "file/below"})
  void outputOntoAFile_isToldAndWritesNothing(String out) throws IOException {
    Files.writeString(dir.resolve("file"), "mine");
    told(run(LOT, "draw", "plan.groovy", "--out", out), ExitCode.PLAN, "file is a file");
    assertEquals("mine", Files.readString(dir.resolve("file")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--out", "--sheet"})
  void emptyOption_isWrongUse(String option) throws IOException {
    told(run(LOT, "draw", "plan.groovy", option, ""), ExitCode.USE, "[U");
    assertFalse(Files.exists(dir.resolve("plan")));
  }

  @Test
  void nulInAName_isWrongUseWithoutJavaWords() throws IOException {
    Run run = run(LOT, "draw", "plan.groovy", "--out", "a\0b");
    told(run, ExitCode.USE, "cannot be the name of a file");
    assertFalse(run.err().contains("java."), run.err());
  }

  @Test
  void emptySetting_isNamedNothing() throws IOException {
    String script = LOT + "param 'wide', 4.ft, 'width'\n";
    Run run = run(script, "draw", "plan.groovy", "--set", "wide=");
    told(run, ExitCode.PLAN, "got nothing [WRONG_TYPE]");
  }

  @Test
  void mixedList_isTheScriptsFaultInItsOwnWords() throws IOException {
    String script =
        LOT
            + "def mixed = [point(1.ft, 1.ft), 3.ft, point(4.ft, 5.ft)]\n"
            + "bed 'a', polygon(mixed), use: 'annual'\n";
    told(run(script), ExitCode.PLAN, "Length stands where Point is needed");
  }

  @Test
  void settingTwice_isWrongUse() throws IOException {
    String script = LOT + "param 'wide', 4.ft, 'width'\n";
    Run run = run(script, "draw", "plan.groovy", "--set", "wide=3ft", "--set", "wide=5ft");
    told(run, ExitCode.USE, "wide is set twice, to 3ft and to 5ft");
  }

  @Test
  void settingWithoutEqualsSign_isWrongUse() throws IOException {
    told(run(LOT, "draw", "plan.groovy", "--set", "wide"), ExitCode.USE, "NAME=VALUE");
  }

  @Test
  void lotLargerThanThePaper_isRefusedBeforeItIsWorkedOut() throws IOException {
    String wide =
        LOT.replace("40.ft", "9000.ft") + "bed 'a', rect(2.m, 2.m, 1.m, 3.m), use: 'annual'\n";
    Run run = run(wide, "draw", "plan.groovy");
    told(run, ExitCode.PLAN, "needs");
    assertFalse(run.out().contains("climate"), run.out());
  }

  @Test
  void missingFacts_areNotedOnceAtTheirRoot() throws IOException {
    Run run = run(LOT + "bed 'a', rect(2.m, 2.m, 1.m, 3.m), use: 'annual'\n");
    told(run, ExitCode.FINE, "no climate is named");
    assertFalse(run.out().contains("climate.normals"), run.out());
    assertFalse(run.out().contains("[kernel.skipped]"), run.out());
  }

  private Run faulty(ToIntFunction<Console> command) {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
    int code = command.applyAsInt(new Console(stream, stream));
    return new Run(code, "", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void stackAndMemoryFaults_endAsFaultWithAReport() {
    told(faulty(c -> c.fault(new StackOverflowError())), ExitCode.FAULT, "yardloom-fault-");
    told(faulty(c -> c.fault(new OutOfMemoryError())), ExitCode.FAULT, "needs more memory");
  }

  @Test
  void faultInsideAWord_isNotCalledAMistakeOfThePlan() {
    PlanException internal = new PlanException(ProblemCode.INTERNAL, "a fault of the program");
    told(faulty(c -> c.problems(internal)), ExitCode.FAULT, "yardloom-fault-");
  }
}
