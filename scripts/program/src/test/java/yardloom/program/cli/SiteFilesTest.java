package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lots from files, through the command line. */
class SiteFilesTest {
  private static final String SIDES =
      " {\n  side 'south', role: 'front'\n  side 'east', role: 'side'\n  side 'north', role: 'rear'\n"
          + "  side 'west', role: 'side'\n}\n";

  @TempDir private Path dir;

  private Run draw(String script) throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), script);
    return Run.in(dir, "draw", "plan.groovy", "--as", "json");
  }

  @Test
  void wktFile_makesTheLot() throws IOException {
    Files.writeString(dir.resolve("lot.wkt"), "POLYGON ((0 0, 60 0, 60 120, 0 120, 0 0))\n");
    Run run = draw("lotOutline(wktOutline(fileText('lot.wkt'), unit: 'ft'))" + SIDES);
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    // 60 by 120 ft are 7200 square feet, 668.9 m².
    assertTrue(Files.readString(dir.resolve("yardloom-out/plan/results.json")).contains("668.9"));
    assertFalse(Files.exists(dir.resolve("yardloom-out/plan/site.geojson")));
  }

  @Test
  void badOutline_isToldAtItsLine() throws IOException {
    Files.writeString(dir.resolve("lot.geojson"), "{\"type\": \"Polygon\", \"coordinates\": [[]]}");
    Run run = draw("plan 'Bad'\nlotOutline(geoOutline(fileText('lot.geojson')))\n");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("plan.groovy:2:"), run.err());
    assertTrue(run.err().contains("four or more positions"), run.err());
  }

  @Test
  void hole_isRefusedForALot() throws IOException {
    Run run =
        draw(
            "lotOutline(rect(0.m, 0.m, 20.m, 20.m) - rect(5.m, 5.m, 5.m, 5.m)) {\n"
                + "  side 'south', role: 'front'\n}\n");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("keepOut"), run.err());
  }
}
