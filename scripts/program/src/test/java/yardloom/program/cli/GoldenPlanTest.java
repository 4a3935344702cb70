package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.program.golden.Golden;

/**
 * Guards the demo's site plan and tables against drift; that they are right is proved elsewhere.
 */
class GoldenPlanTest {
  @TempDir private Path dir;

  @Test
  void urbana_sitePlanAndTables_haveNotDrifted() {
    Path demo = Samples.FOLDER.resolve("urbana-yard.groovy");
    Run run = Run.in(dir, "draw", demo.toString(), "--out", "out");
    assertEquals(ExitCode.FINE, run.code(), run.err());
    Map<String, String> files = Run.files(dir.resolve("out/urbana-yard"));
    Golden.check("urbana-yard/01-site-plan.svg", files.get("sheets/01-site-plan.svg"));
    files.forEach(
        (name, text) -> {
          if (name.endsWith(".csv")) {
            Golden.check("urbana-yard/" + name, text);
          }
        });
  }
}
