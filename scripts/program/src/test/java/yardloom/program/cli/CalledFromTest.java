package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finding about what a helper drew names the helper's line and the one that called it. */
class CalledFromTest {
  @TempDir Path folder;

  /** The second call draws across the lot's east line at 40 ft; lines counted by hand. */
  private static final String PLAN =
      """
      plan 'Called', units: 'us'
      lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
      void strip(String name, Length x) {
        bed name, rect(x, 5.ft, 4.ft, 20.ft), use: 'annual'
      }
      strip 'inside', 4.ft
      strip 'outside', 38.ft
      """;

  @Test
  void check_namesTheCallThatDrewIt() throws IOException {
    Files.writeString(folder.resolve("called.groovy"), PLAN);
    Run run = Run.in(folder, "check", "called.groovy");
    String all = run.out() + run.err();
    assertTrue(all.contains("called.groovy:4:3: called from line 7: bed \"outside\": "), all);
    assertTrue(!all.contains("called from line 6: bed \"outside\""), all);
  }

  @Test
  void jsonForm_keepsTheCallingLine() throws IOException {
    Files.writeString(folder.resolve("called.groovy"), PLAN);
    Run converted = Run.in(folder, "convert", "called.groovy", "--places");
    assertEquals(0, converted.code(), converted.err());
    Run run = Run.in(folder, "check", "called.plan.json");
    String all = run.out() + run.err();
    assertTrue(all.contains("called.groovy:4:3: called from line 7: bed \"outside\": "), all);
  }
}
