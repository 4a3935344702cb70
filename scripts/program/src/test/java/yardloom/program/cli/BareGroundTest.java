package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Texts speak of what stands there: no lawn where there is none, cardboard only where it is laid.
 */
class BareGroundTest {
  private static final String PLAN =
      """
      plan 'Bare', units: 'us'
      work crew: 2, hoursPerDay: 6, start: '2026-10-05'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
      bed('sage', rect(10.ft, 10.ft, 20.ft, 4.ft), use: 'perennial') { plant 'sage' }
      bed('thyme', rect(10.ft, 16.ft, 20.ft, 4.ft), use: 'perennial') { plant 'thyme' }
      path 'way', line([point(10.ft, 30.ft), point(40.ft, 30.ft)]), width: 3.ft, use: 'barrow'
      """;

  @TempDir private Path dir;

  private Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "svg,csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/" + name));
  }

  private static String text(Map<String, String> files) {
    StringBuilder all = new StringBuilder();
    files.forEach(
        (name, file) -> {
          if (!name.startsWith("tables/weeds-through") && !name.equals("calculations.txt")) {
            all.append(name.endsWith(".svg") ? file.replaceAll("<[^>]*>", "\n") : file);
          }
        });
    return all.toString();
  }

  @Test
  void chipsAlone_nameNeitherLawnNorCardboard() throws IOException {
    Map<String, String> files = drawn("bare", PLAN + "sheetMulch { chipsOnly() }\n");
    String text = text(files);
    assertTrue(files.get("findings.txt").contains("a strip of bare ground up to 24 in wide"));
    assertTrue(text.contains("Narrow strips of bare ground"), text);
    assertTrue(files.get("tables/materials-phases.csv").contains("\nGround cover,"));
    assertTrue(text.contains("Part what covers the ground"), text);
    // An edge is cut where mulch meets lawn that stays.
    assertFalse(files.get("tables/materials-labour.csv").contains("cut edge"));
    // The column of sheets stays, as in every take-off.
    String without = text.replace("Cardboard sheets", "").replaceAll("Cardboard\\s+sheets", "");
    for (String line : without.split("\n")) {
      assertFalse(line.toLowerCase().contains("lawn") && !line.contains("lawn-strip"), line);
      assertFalse(line.contains("ardboard and its cover"), line);
    }
  }

  @Test
  void withoutAWord_lawnAndCardboardAreNamed() throws IOException {
    Map<String, String> files = drawn("lawn", PLAN);
    assertTrue(files.get("findings.txt").contains("a strip of lawn up to 24 in wide"));
    assertTrue(files.get("tables/materials-phases.csv").contains("\nCardboard and its cover,"));
    assertTrue(text(files).contains("Cut a cross in the cardboard"));
    assertTrue(files.get("tables/materials-labour.csv").contains("cut edge"));
  }

  @Test
  void openGround_goesBeforeWhatTheMulchTells() throws IOException {
    Map<String, String> files = drawn("weeds", PLAN + "openGround 'weeds'\n");
    assertTrue(files.get("findings.txt").contains("a strip of weeds up to 24 in wide"));
  }
}
