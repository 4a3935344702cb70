package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.limit.RunLimits;

/** Plans that one method of the Java machine cannot hold. */
class LongScriptTest {
  @TempDir Path folder;

  private final PlanRunner runner =
      new PlanRunner(TestWords.lexicon(), RunLimits.standard(), (s, w) -> Optional.empty());

  private Plan run(String text) throws IOException {
    return runner.run(Files.writeString(folder.resolve("long.groovy"), text), Map.of());
  }

  private static String lines(int count, IntFunction<String> line) {
    return IntStream.range(0, count).mapToObj(line).collect(Collectors.joining("\n")) + "\n";
  }

  private static String note(Plan plan) {
    return plan.parameters().entrySet().stream()
        .filter(e -> e.getKey().startsWith("note"))
        .map(Map.Entry::getValue)
        .collect(Collectors.joining("; "));
  }

  @Test
  void literalBeds_sixHundredOneAfterAnother_areAllDrawnInOrder() throws IOException {
    literalBeds(600);
  }

  @Tag("heavy")
  @Test
  void literalBeds_twoThousandOneAfterAnother_areAllDrawnInOrder() throws IOException {
    literalBeds(2_000);
  }

  private void literalBeds(int count) throws IOException {
    Plan plan =
        run(
            lines(
                count,
                i ->
                    "bed 'bed %d', rect(%d.m, 0.m, 4.m, 2.m), use: 'annual', { plant 'kale' }"
                        .formatted(i, 5 * i)));
    assertEquals(count, plan.elements().size());
    for (int i : List.of(0, 377, count - 1)) {
      assertEquals(
          i + 1,
          plan.elements().stream()
              .filter(e -> e.common().id().name().equals("bed " + i))
              .findFirst()
              .orElseThrow()
              .place()
              .line());
    }
  }

  @Test
  void declaredBeds_sixHundred_stayKnownBehind() throws IOException {
    declaredBeds(600);
  }

  @Tag("heavy")
  @Test
  void declaredBeds_twoThousandOneHundred_stayKnownBehind() throws IOException {
    declaredBeds(2_100);
  }

  private void declaredBeds(int count) throws IOException {
    Plan plan =
        run(
            lines(
                    count,
                    i ->
                        "def b%d = bed('bed %d', rect(%d.m, 0.m, 4.m, %d.m), use: 'annual')"
                            .formatted(i, i, 5 * i, 1 + i % 3))
                + "note \"${(b0.shape + b1.shape + b%d.shape).area}\"\n".formatted(count - 1));
    // 4 × 1 + 4 × 2 + 4 × 3: the last of a multiple of three is 3 m deep.
    assertEquals("24 m²", note(plan));
    assertEquals(count, plan.elements().size());
  }

  @Test
  void valueThatChanges_betweenManyStatements_isFollowed() throws IOException {
    Plan plan =
        run(
            "def total = 0.m\ndef name = 'x'\n"
                + lines(
                    300,
                    i ->
                        "total = total + %d.m\nbed 'bed %d', rect(total, 0.m, 1.m, 1.m), use: 'annual'"
                            .formatted(i, i))
                + "note \"$total $name\"\n");
    // 0 + 1 + … + 299 = 299 × 300 / 2
    assertEquals("44850 m x", note(plan));
    assertEquals(300, plan.elements().size());
  }

  @Test
  void listOfEightThousandLengths_keepsOrderAndType() throws IOException {
    Plan plan =
        run(
            "def all = [\n"
                + lines(8_000, i -> "%d.m,".formatted(2 * i))
                + "]\nnote \"${all.size()} ${all[0]} ${all[101] + 1.m} ${all[7999]}\"\n");
    assertEquals("8000 0 m 203 m 15998 m", note(plan));
  }

  @Test
  void listsOfPoints_addedToOneThatChanges_keepOrder() throws IOException {
    String some = lines(90, i -> "point(%d.m, %d.m),".formatted(i, 2 * i));
    Plan plan =
        run(
            "List<Point> all = []\n"
                + lines(30, i -> "all = all + [\n" + some + "]")
                + "note \"${all.size()} ${all[2699].y} ${all[91].x}\"\n");
    // 30 times 90 points; the last has y = 2 × 89, the second of the second list x = 1
    assertEquals("2700 178 m 1 m", note(plan));
  }

  @Test
  void longBodies_ofBlockLoopBranchAndHelper_runWhole() throws IOException {
    String words = lines(1_500, i -> "plant 'kale %d', spacing: %d.m".formatted(i, 1 + i % 7));
    String beds =
        lines(
            350, i -> "bed \"$mark %d\", rect(%d.m, 0.m, 1.m, 1.m), use: 'annual'".formatted(i, i));
    Plan plan =
        run(
            "void many(String mark) {\n"
                + beds
                + "}\nbed 'a', rect(0.m, 0.m, 1.m, 1.m), use: 'annual', {\n"
                + words
                + "}\nfor (i in 1..2) {\n  def mark = \"loop $i\"\n"
                + beds
                + "}\nif (1 < 2) {\n  def mark = 'branch'\n"
                + beds
                + "}\nmany('helper')\n");
    assertEquals(1 + 4 * 350, plan.elements().size());
  }

  @Test
  void mistake_farDownInALongPlan_isToldAtItsLine() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                run(
                    lines(
                        600,
                        i ->
                            "bed 'bed %d', rect(%d.m, 0.m, %s, 2.m), use: 'annual'"
                                .formatted(i, i, i == 412 ? "4" : "4.m"))));
    assertEquals(413, e.problems().get(0).place().line());
    assertEquals(ProblemCode.WRONG_TYPE, e.problems().get(0).code());
  }

  @Test
  void oneStatementTooLong_toBeCut_isToldWithItsLine() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                run(
                    "note 'first'\ndef sum = 0.m\n"
                        + lines(1_500, i -> "sum = sum + %d.m * 2 - %d.m".formatted(i, i))));
    Problem told = e.problems().get(0);
    assertEquals(ProblemCode.LIMIT, told.code());
    assertTrue(told.message().contains("loop"), told.message());
    assertTrue(told.place().line() >= 1, told.toString());
  }
}
