package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Barrows go round fences and through gates. Source: straight lines on the plan, worked beside each
 * value.
 */
class BarrowBarriersTest {
  private static final String YARD =
      """
      plan 'Barrows', units: 'metric'
      lot([point(0.m, 0.m), point(30.m, 0.m), point(30.m, 40.m), point(0.m, 40.m)]) {
        side 'south', role: 'front'
        for (s in ['east', 'west']) side s, role: 'side'
        side 'north', role: 'rear'
      }
      gate 'street', point(15.m, 1.m)
      path 'main', line([point(15.m, 0.m), point(15.m, 30.m)]), width: 1.2.m, use: 'barrow'
      bed 'far', rect(13.m, 30.m, 4.m, 2.m), use: 'annual'
      """;

  @TempDir Path dir;

  private List<String> table(String id, String more) throws IOException {
    Path script = dir.resolve("barrows.groovy");
    Files.writeString(script, YARD + more);
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out", "--as", "csv");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    return Files.readAllLines(dir.resolve("out/barrows/tables/" + id + ".csv"));
  }

  private String barrowWayToFar(String more) throws IOException {
    return table("routes", more).stream().filter(r -> r.contains("far")).findFirst().orElse("none");
  }

  /** The gate stands a metre up the path, the bed begins at its end: 29 m. */
  @Test
  void path_free_isTheWay() throws IOException {
    assertTrue(barrowWayToFar("").contains("29.0"), barrowWayToFar(""));
  }

  @Test
  void path_throughAFence_isNoWayWithoutAGate() throws IOException {
    String fence = "fence 'across', line([point(0.m, 20.m), point(30.m, 20.m)]), height: 1.5.m\n";
    assertTrue(!barrowWayToFar(fence).contains("29.0"), barrowWayToFar(fence));
    String gate = fence + "gate 'middle', point(15.m, 20.m)\n";
    List<String> rows = table("routes", gate);
    assertTrue(rows.stream().anyMatch(r -> r.contains("29.0")), rows.toString());
  }
}
