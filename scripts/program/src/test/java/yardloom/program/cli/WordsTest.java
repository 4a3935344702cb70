package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.limit.RunLimits;
import yardloom.language.run.PlanRunner;

class WordsTest {
  private static final Path SHIPPED =
      Path.of("src/main/resources/yardloom/program/cli", ShippedWords.RESOURCE);

  @Test
  void shippedWords_listIsCurrent() throws IOException {
    String now =
        Toolkit.load().plugins().lexicon().all().stream()
            .filter(w -> !w.plugin().equals("kernel"))
            .map(w -> w.plugin() + " " + Scope.nameOf(w.scope()) + " " + w.name())
            .sorted()
            .collect(Collectors.joining("\n", "", "\n"));
    if (Boolean.getBoolean("updateGolden")) {
      Files.writeString(SHIPPED, now);
    }
    assertEquals(
        Files.readString(SHIPPED, StandardCharsets.UTF_8), now, "run with -DupdateGolden=true");
  }

  @Test
  void examples_ofAllWords_areInThePlanLanguage(@TempDir Path dir) throws IOException {
    PlanRunner runner =
        new PlanRunner(
            Toolkit.load().plugins().lexicon(),
            RunLimits.standard(),
            (scope, word) -> Optional.empty());
    for (Word word : Toolkit.load().plugins().lexicon().all()) {
      Path script = Files.writeString(dir.resolve("example.groovy"), word.example() + "\n");
      List<Problem> broken =
          runner.check(script).stream()
              .filter(p -> p.code() == ProblemCode.FORBIDDEN || p.code() == ProblemCode.SYNTAX)
              .toList();
      assertEquals(List.of(), broken, word.example());
    }
  }

  @Test
  void words_withoutArgument_listsEveryBlock() {
    Run run = Run.in(Path.of("."), "words");
    assertEquals(ExitCode.FINE, run.code());
    assertTrue(run.out().contains("in the block of plan:"), run.out());
    assertTrue(run.out().contains("in every block:"), run.out());
  }

  @Test
  void words_ofAWord_explainsItsOptions() {
    Run run = Run.in(Path.of("."), "words", "building");
    assertEquals(ExitCode.FINE, run.code());
    assertTrue(run.out().contains("eaves"), run.out());
    assertTrue(run.out().contains("example: "), run.out());
  }

  @Test
  void words_ofAMisspeltWord_suggests() {
    Run run = Run.in(Path.of("."), "words", "biulding");
    assertEquals(ExitCode.USE, run.code());
    assertTrue(run.err().contains("`building`"), run.err());
  }

  /** Ramps are a plant of the woods; tomatoes are none. */
  @Test
  void words_ofPlants_areThoseThatSayWhatIsAsked() {
    Run run = Run.in(Path.of("."), "words", "plants", "light:or shade", "native:eastern");
    assertEquals(ExitCode.FINE, run.code());
    assertTrue(run.out().contains("  ramps "), run.out());
    assertFalse(run.out().contains("  tomato "), run.out());
    assertFalse(run.out().contains("  hosta "), "not native: " + run.out());
    Run named = Run.in(Path.of("."), "words", "plants", "Tomat");
    assertEquals(ExitCode.FINE, named.code());
    assertTrue(named.out().contains("1 of "), named.out());
    assertTrue(named.out().contains("crop tomato, Kc 0.60"), named.out());
    assertEquals(ExitCode.USE, Run.in(Path.of("."), "words", "plants", "light").code());
    Run wrong = Run.in(Path.of("."), "words", "plants", "ligth:shade");
    assertEquals(ExitCode.USE, wrong.code());
    assertTrue(wrong.err().contains("Did you mean `light`?"), wrong.err());
  }

  @Test
  void words_ofClimatesAndSoils_listThem() {
    Run climates = Run.in(Path.of("."), "words", "climates");
    assertTrue(climates.out().contains("phoenix-az"), climates.out());
    assertTrue(climates.out().contains("41.4 in (1051 mm) a year"), "Urbana: " + climates.out());
    assertTrue(Run.in(Path.of("."), "words", "soils").out().contains("clay loam"));
  }

  @Test
  void plugins_areListed() {
    Run run = Run.in(Path.of("."), "plugins", "--verbose");
    for (String id : new String[] {"materials", "planting", "soil", "sun", "water", "work"}) {
      assertTrue(run.out().contains(id + " "), run.out());
    }
  }
}
