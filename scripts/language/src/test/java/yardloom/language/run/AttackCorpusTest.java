package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;

/**
 * Scripts that try to do more than draw. Each says what must happen: refused before it runs,
 * stopped at a limit, and at which line, or that it is a harmless drawing after all.
 */
class AttackCorpusTest {
  private static final Pattern NUMBER = Pattern.compile("\\d+");

  /** One attack: its text, what must happen, and the lines that must be named. */
  private record Attack(String name, String fate, List<Integer> lines, String text) {}

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> attack_eachOfThem_isRefusedOrStoppedAtItsLine() throws Exception {
    List<Attack> attacks = new ArrayList<>(single());
    attacks.addAll(families());
    return attacks.stream().map(a -> DynamicTest.dynamicTest(a.name(), () -> attempt(a)));
  }

  @Test
  void corpus_ofAttacks_isLargeAndWide() throws Exception {
    assertTrue(single().size() + families().size() >= 120);
    try (Stream<Path> files = Files.list(resource("families"))) {
      assertTrue(files.count() >= 25);
    }
  }

  private void attempt(Attack attack) throws IOException {
    Path home = Files.createTempDirectory(folder, "attack");
    Path canary = Files.createDirectory(home.resolve("canary"));
    Path plans = Files.createDirectories(home.resolve("plans/a")).getParent();
    Files.writeString(home.resolve("outside.groovy"), "note 'PWNED'\n");
    Files.createSymbolicLink(plans.resolve("link.groovy"), home.resolve("outside.groovy"));
    Files.writeString(plans.resolve("data.txt"), "note 'PWNED'\n");
    Files.writeString(home.resolve("outside.txt"), "PWNED");
    Files.createSymbolicLink(plans.resolve("link.txt"), home.resolve("outside.txt"));
    Files.createSymbolicLink(plans.resolve("script-link.txt"), plans.resolve("attack.groovy"));
    Files.createDirectory(plans.resolve("folder.txt"));
    Files.write(plans.resolve("binary.txt"), new byte[] {(byte) 0xC3, (byte) 0x28});
    Files.writeString(plans.resolve("large.txt"), "x".repeat((1 << 20) + 1));
    Path plan = plans.resolve("attack.groovy");
    Files.writeString(plan, attack.text().replace("@CANARY@", canary.toString()));

    PlanRunner runner =
        new PlanRunner(TestWords.lexicon(), OneLinerProbesTest.SMALL, (s, w) -> Optional.empty());
    List<Problem> found = runner.check(plan);
    if (attack.fate().equals("harmless")) {
      runner.run(plan, Map.of());
      assertUntouched(canary);
      return;
    }
    PlanException stopped =
        assertThrows(PlanException.class, () -> runner.run(plan, Map.of()), "it ran");
    if (attack.fate().equals("refused")) {
      assertFalse(found.isEmpty(), "it was not refused before running: " + stopped.getMessage());
    } else if (found.isEmpty()) {
      ProblemCode code = stopped.problems().get(0).code();
      assertTrue(
          code == ProblemCode.LIMIT || code == ProblemCode.OUT_OF_RANGE, stopped.getMessage());
    }
    List<Integer> lines = stopped.problems().stream().map(p -> p.place().line()).toList();
    assertTrue(lines.containsAll(attack.lines()), stopped.getMessage());
    for (Problem problem : stopped.problems()) {
      assertFalse(problem.code() == ProblemCode.INTERNAL, problem.toString());
      // The last gate must not be the one that says no: then the messages would be poor.
      assertFalse(problem.message().contains("finished script"), problem.toString());
    }
    assertUntouched(canary);
  }

  private static void assertUntouched(Path canary) throws IOException {
    try (Stream<Path> left = Files.list(canary)) {
      assertEquals(0, left.count(), "the canary folder was touched");
    }
  }

  private static List<Attack> single() throws Exception {
    List<Attack> attacks = new ArrayList<>();
    for (Path file : files(".", ".groovy")) {
      String text = Files.readString(file);
      String first = text.lines().findFirst().orElseThrow();
      boolean refused = first.contains("MUST be refused before it runs");
      String fate = refused ? "refused" : "stopped";
      attacks.add(new Attack(file.getFileName().toString(), fate, lines(first), text));
    }
    return attacks;
  }

  private static List<Integer> lines(String header) {
    Matcher named = Pattern.compile("lines? (\\d+)(?: (and|to) (\\d+))?").matcher(header);
    List<Integer> lines = new ArrayList<>();
    if (named.find()) {
      int first = Integer.parseInt(named.group(1));
      int last = named.group(3) == null ? first : Integer.parseInt(named.group(3));
      for (int i = first; i <= last; i++) {
        lines.add(i);
      }
    }
    return lines;
  }

  private static List<Attack> families() throws Exception {
    List<Attack> attacks = new ArrayList<>();
    for (Path file : files("families", ".txt")) {
      for (String part : Files.readString(file).split("(?m)^### ")) {
        if (part.isBlank()) {
          continue;
        }
        String head = part.lines().findFirst().orElseThrow();
        String text = part.substring(head.length() + 1);
        String what = head.substring(head.indexOf('|') + 1);
        Matcher line = NUMBER.matcher(what);
        assertTrue(line.find(), head);
        attacks.add(
            new Attack(
                file.getFileName() + ": " + head,
                what.strip().replaceFirst(" .*", ""),
                List.of(Integer.valueOf(line.group())),
                text));
      }
    }
    return attacks;
  }

  private static List<Path> files(String where, String ending) throws Exception {
    try (Stream<Path> files = Files.list(resource(where))) {
      return files.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }

  private static Path resource(String name) throws URISyntaxException {
    return Path.of(AttackCorpusTest.class.getResource("/yardloom/language/attacks").toURI())
        .resolve(name);
  }
}
