package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
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
import yardloom.language.run.PlanRunner;

/**
 * Hostile plans through the newer words. Each file under {@code doors} holds cases headed {@code
 * ### name | fate line}: {@code refused} means before anything runs, {@code stopped} while it does.
 * Before each stands one line: a yard, and {@code BED} is a bed in it.
 */
class NewDoorsAttackTest {
  private static final String YARD =
      "plan 'Attack', units: 'us'; lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft),"
          + " point(0.ft, 30.ft)]); tree 'pear', point(9.ft, 9.ft), crown: 9.ft, height: 9.ft\n";
  private static final String BED =
      "bed('b', rect(4.ft, 4.ft, 12.ft, 12.ft), use: 'annual') { plant 'pea'; ";

  /** Reached long before a test's patience ends. */
  private static final RunLimits SMALL =
      new RunLimits(200_000, 256L << 20, Duration.ofSeconds(10), 200, 500, 8);

  @TempDir private Path dir;

  private final PlanRunner runner =
      new PlanRunner(Toolkit.load().plugins().lexicon(), SMALL, (s, w) -> Optional.empty());

  private record Attack(String name, boolean isJson, String fate, int line, String text) {}

  @TestFactory
  Stream<DynamicTest> attack_eachOfThem_isRefusedOrStoppedAtItsLine() throws Exception {
    return attacks().stream().map(a -> DynamicTest.dynamicTest(a.name(), () -> attempt(a)));
  }

  @Test
  void corpus_ofNewDoors_isLarge() throws Exception {
    assertTrue(attacks().size() >= 80, "only " + attacks().size());
  }

  private static List<Attack> attacks() throws Exception {
    List<Attack> attacks = new ArrayList<>();
    Path where = Path.of(NewDoorsAttackTest.class.getResource("doors").toURI());
    try (Stream<Path> files = Files.list(where)) {
      for (Path file : files.sorted().toList()) {
        String of = file.getFileName().toString();
        for (String part : Files.readString(file).split("(?m)^### ")) {
          if (!part.isBlank()) {
            String head = part.lines().findFirst().orElseThrow();
            String[] fate = head.substring(head.indexOf('|') + 1).strip().split(" ");
            attacks.add(
                new Attack(
                    of + ": " + head,
                    of.equals("json.txt"),
                    fate[0],
                    Integer.parseInt(fate[1]),
                    part.substring(head.length() + 1)));
          }
        }
      }
    }
    return attacks;
  }

  private Path written(Attack attack) throws IOException {
    return attack.isJson()
        ? Files.writeString(
            dir.resolve("attack.plan.json"),
            "{\"form\": \"yardloom-plan-1\", \"plan\": [\n" + attack.text().strip() + "]}")
        : Files.writeString(
            dir.resolve("attack.groovy"), YARD + attack.text().replace("BED {", BED));
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.walk(dir)) {
      return files.map(Path::toString).sorted().toList();
    }
  }

  private void attempt(Attack attack) throws IOException {
    Path plan = written(attack);
    List<String> before = files();
    List<Problem> found = runner.check(plan);
    PlanException thrown =
        assertThrows(PlanException.class, () -> runner.run(plan, Map.of()), "it ran");
    assertEquals(attack.fate().equals("refused"), !found.isEmpty(), thrown.getMessage());
    assertTrue(
        thrown.problems().stream().anyMatch(p -> p.place().line() == attack.line()),
        thrown.getMessage());
    if (attack.fate().equals("refused")) {
      assertTrue(
          found.stream().anyMatch(p -> p.place().line() == attack.line()), "refused elsewhere");
    }
    assertEquals(before, files(), "something was written");
    for (Problem problem : thrown.problems()) {
      assertFalse(problem.code() == ProblemCode.INTERNAL, problem.toString());
      assertTrue(problem.message().length() < 5_000, "a message without end");
    }
  }
}
