package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.limit.RunLimits;

/** Each line is a script; none may do more than draw, and none may fail inside the program. */
class OneLinerProbesTest {
  static final RunLimits SMALL =
      new RunLimits(20_000, 64L << 20, Duration.ofSeconds(5), 200, 100, 4);

  @TempDir Path folder;

  @Test
  void probes_allOfThem_areRefusedStoppedOrHarmless() throws IOException {
    PlanRunner runner = new PlanRunner(TestWords.lexicon(), SMALL, (s, w) -> Optional.empty());
    List<String> faults = new ArrayList<>();
    int n = 0;
    for (String probe : probes()) {
      Path file = folder.resolve("probe" + n++ + ".groovy");
      Files.writeString(file, probe.replace("\\n", "\n"));
      try {
        runner.run(file, Map.of());
      } catch (PlanException e) {
        boolean bad =
            e.problems().stream()
                .anyMatch(
                    p ->
                        p.code() == ProblemCode.INTERNAL
                            || p.place().line() == 0
                            || p.message().contains("finished script"));
        if (bad) {
          faults.add(probe + " -> " + e.problems());
        }
      } catch (Throwable t) {
        faults.add(probe + " -> " + t);
      }
      Files.delete(file);
    }
    assertEquals(List.of(), faults);
    assertEquals(0, Files.list(folder).count());
  }

  private static List<String> probes() throws IOException {
    try (InputStream in =
        OneLinerProbesTest.class.getResourceAsStream("/yardloom/language/attacks/one-liners.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }
}
