package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.limit.RunLimits;

/**
 * Hostile plans in JSON form. Each file under {@code attacks/json} holds cases headed {@code ###
 * name | fate line:column}; {@code refused} means before anything runs, {@code stopped} while it
 * does.
 */
class FormAttackTest {
  @TempDir Path folder;

  private final PlanRunner runner =
      new PlanRunner(TestWords.lexicon(), OneLinerProbesTest.SMALL, (s, w) -> Optional.empty());

  private record Attack(String name, String fate, String place, String text) {}

  @TestFactory
  Stream<DynamicTest> attack_eachOfThem_isRefusedAtItsPlace() throws Exception {
    return attacks().stream().map(a -> DynamicTest.dynamicTest(a.name(), () -> attempt(a)));
  }

  @Test
  void corpus_ofHostilePlans_isLarge() throws Exception {
    assertTrue(attacks().size() >= 50, "only " + attacks().size());
  }

  private static List<Attack> attacks() throws Exception {
    List<Attack> attacks = new ArrayList<>();
    Path where =
        Path.of(FormAttackTest.class.getResource("/yardloom/language/attacks/json").toURI());
    try (Stream<Path> files = Files.list(where)) {
      for (Path file : files.sorted().toList()) {
        for (String part : Files.readString(file).split("(?m)^### ")) {
          if (!part.isBlank()) {
            String head = part.lines().findFirst().orElseThrow();
            String[] fate = head.substring(head.indexOf('|') + 1).strip().split(" ");
            attacks.add(new Attack(head, fate[0], fate[1], part.substring(head.length() + 1)));
          }
        }
      }
    }
    return attacks;
  }

  private void attempt(Attack attack) throws Exception {
    Path plan = Files.writeString(folder.resolve("attack.plan.json"), attack.text());
    List<Problem> found = runner.check(plan);
    PlanException thrown = assertThrows(PlanException.class, () -> runner.run(plan, Map.of()));
    List<String> places =
        thrown.problems().stream().map(p -> p.place().line() + ":" + p.place().column()).toList();
    assertTrue(places.contains(attack.place()), thrown.getMessage());
    assertEquals(attack.fate().equals("refused"), !found.isEmpty(), found.toString());
    for (Problem problem : thrown.problems()) {
      assertEquals(plan.toString(), problem.place().file());
      assertFalse(problem.code() == ProblemCode.INTERNAL, problem.toString());
    }
  }

  private ProblemCode codeOf(byte[] text) throws Exception {
    Path plan = Files.write(folder.resolve("attack.plan.json"), text);
    PlanException thrown = assertThrows(PlanException.class, () -> runner.run(plan, Map.of()));
    return thrown.problems().get(0).code();
  }

  private ProblemCode codeOf(String text) throws Exception {
    return codeOf(text.getBytes(StandardCharsets.UTF_8));
  }

  private static String plan(String steps) {
    return "{\"form\": \"yardloom-plan-1\", \"plan\": [" + steps + "]}";
  }

  @Test
  void size_depthAndNumberOfValues_haveLimits() throws Exception {
    assertEquals(ProblemCode.LIMIT, codeOf("[".repeat(100_000)));
    assertEquals(ProblemCode.LIMIT, codeOf("{\"a\":".repeat(100_000)));
    assertEquals(ProblemCode.LIMIT, codeOf(plan("1,".repeat(400_001) + "1")));
    assertEquals(ProblemCode.LIMIT, codeOf(" ".repeat((12 << 20) + 1)));
    assertEquals(ProblemCode.FILE, codeOf(new byte[] {'{', (byte) 0xC3, (byte) 0x28}));
  }

  @Test
  void elements_moreThanAPlanMayHold_areStopped() throws Exception {
    StringBuilder beds = new StringBuilder();
    for (int i = 0; i < 300; i++) {
      beds.append(i == 0 ? "" : ",")
          .append("{\"word\": \"bed\", \"with\": {\"name\": \"b")
          .append(i)
          .append("\", \"use\": \"annual\", \"shape\": {\"ground\": [[[[0,0],[1,0],[0,1]]]]}}}");
    }
    Path plan = Files.writeString(folder.resolve("many.plan.json"), plan(beds.toString()));
    RunLimits few =
        new RunLimits(5_000_000, 2L << 30, java.time.Duration.ofSeconds(30), 1_000, 200, 8);
    PlanRunner small = new PlanRunner(TestWords.lexicon(), few, (s, w) -> Optional.empty());
    PlanException thrown = assertThrows(PlanException.class, () -> small.run(plan, Map.of()));
    assertEquals(ProblemCode.LIMIT, thrown.problems().get(0).code());
  }

  @Test
  void problems_ofAPlanWithVeryMany_areNotAllTold() throws Exception {
    Path plan =
        Files.writeString(
            folder.resolve("wrong.plan.json"), plan("{\"word\": \"x\"},".repeat(5_000) + "1"));
    assertTrue(runner.check(plan).size() <= 60);
  }
}
