package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.Element;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.language.limit.RunLimits;

/** Lines counted by hand in the scripts below. */
class CallersTest {
  @TempDir Path folder;

  private Map<String, String> lines(String text) throws IOException {
    Map<String, String> lines = new TreeMap<>();
    for (Element e : runner().run(script(text), Map.of()).elements()) {
      SourceRef place = e.place();
      lines.put(e.id().name(), place.line() + " from " + place.calledFrom());
    }
    return lines;
  }

  private Path script(String text) throws IOException {
    return Files.writeString(folder.resolve("my-plan.groovy"), text);
  }

  private static PlanRunner runner() {
    return new PlanRunner(TestWords.lexicon(), RunLimits.standard(), (s, w) -> Optional.empty());
  }

  @Test
  void helper_calledTwice_tellsBothCalls() throws IOException {
    assertEquals(
        Map.of("a", "2 from 4", "b", "2 from 6", "c", "5 from 0"),
        lines(
            """
            void strip(String name, int n) {
              bed name, rect(3.m * n, 0.m, 1.m, 2.m), use: 'annual'
            }
            strip 'a', 1
            bed 'c', rect(0.m, 9.m, 1.m, 2.m), use: 'annual'
            strip 'b', 2
            """));
  }

  @Test
  void helpersInHelpersAndLoops_tellTheOutermostCall() throws IOException {
    assertEquals(
        Map.of("r 1", "2 from 8", "r 2", "2 from 8", "s 1", "2 from 10", "s 2", "2 from 10"),
        lines(
            """
            void one(String name, int n, int row) {
              bed name, rect(3.m * n, 3.m * row, 1.m, 2.m), use: 'annual'
            }
            void row(String name, int row) {
              one "${name} 1", 1, row
              one "${name} 2", 2, row
            }
            row 'r', 1
            [2].each { int i ->
              row 's', i
            }
            """));
  }

  @Test
  void closures_calledByName_tellTheCall_loopsDoNot() throws IOException {
    assertEquals(
        Map.of("a", "2 from 4", "l 1", "6 from 0", "l 2", "6 from 0"),
        lines(
            """
            def strip = { String name, int n ->
              bed name, rect(3.m * n, 0.m, 1.m, 2.m), use: 'annual'
            }
            strip('a', 1)
            [1, 2].each { int i ->
              bed "l ${i}", rect(3.m * i, 5.m, 1.m, 2.m), use: 'annual'
            }
            """));
  }

  @Test
  void problemInHelper_namesTheCallingLine() throws IOException {
    Path file =
        script(
            """
            void strip(String name, String use) {
              bed name, rect(0.m, 0.m, 1.m, 2.m), use: use
            }

            strip 'a', 'anual'
            """
                .replace("  def share = 1 / (wide.in(m) - 3)\n", ""));
    PlanException e = assertThrows(PlanException.class, () -> runner().run(file, Map.of()));
    String said = e.problems().get(0).toString();
    assertTrue(said.contains("my-plan.groovy:2:"), said);
    assertTrue(said.contains(": called from line 5: "), said);
  }
}
