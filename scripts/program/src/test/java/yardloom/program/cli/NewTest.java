package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan to begin with. */
class NewTest {
  @TempDir private Path dir;

  /** A starter with a warning would teach its reader to overlook warnings. */
  @ParameterizedTest
  @CsvSource({
    "yard,us", "yard,metric", "slope,us", "slope,metric",
    "corner,us", "corner,metric", "courtyard,us", "courtyard,metric"
  })
  void starter_drawn_hasNoErrorOrWarning(String like, String units) throws IOException {
    Run run = Run.in(dir, "new", "first-try", "--like", like, "--units", units);
    assertEquals(ExitCode.FINE, run.code(), run.err());
    String script = Files.readString(dir.resolve("first-try.groovy"));
    assertFalse(script.contains("‹") || script.contains("›"), script);
    Run draw = Run.in(dir, "draw", "first-try.groovy", "--as", "svg,csv");
    assertEquals(ExitCode.FINE, draw.code(), draw.err());
    Map<String, String> files = Run.files(dir.resolve("yardloom-out/first-try"));
    assertFalse(files.get("findings.txt").contains("WARNING"), files.get("findings.txt"));
    assertTrue(files.get("sheets/02-layout.svg").contains("First try"));
    // Every starter grows something, waters it and mulches it.
    for (String table : List.of("plant-list", "irrigation", "materials-order", "materials-cost")) {
      assertTrue(files.containsKey("tables/" + table + ".csv"), files.keySet()::toString);
    }
    String unit = units.equals("us") ? "area_sqft" : "area_sqm";
    assertTrue(files.get("tables/beds.csv").contains(unit), files.get("tables/beds.csv"));
  }

  @Test
  void starter_teachesAParameter_thatCanBeSet() throws IOException {
    Run.in(dir, "new");
    String script = Files.readString(dir.resolve("my-yard.groovy"));
    assertTrue(script.contains("yardloom draw my-yard.groovy --set bedWidth=3.5ft"), script);
    Run.in(dir, "draw", "my-yard.groovy", "--set", "bedWidth=3.5ft", "--as", "csv");
    String beds = Files.readString(dir.resolve("yardloom-out/my-yard/tables/beds.csv"));
    // 16 ft × 3.5 ft.
    assertTrue(beds.contains("kitchen 1,annual,56,"), beds);
  }

  @Test
  void nameOfAFileThatStands_isRefused_andTheFileStays() throws IOException {
    Path file = Files.writeString(dir.resolve("mine.groovy"), "// mine\n");
    Run run = Run.in(dir, "new", "mine");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("mine.groovy: there is such a file already"), run.err());
    assertEquals("// mine\n", Files.readString(file));
    try (var files = Files.list(dir)) {
      assertEquals(List.of(file), files.toList(), "nothing is left behind");
    }
  }

  @Test
  void nameWithFolderEndingAndBlanks_isTheFileAndTheTitle() throws IOException {
    Run run = Run.in(dir, "new", "plans/oak street.groovy", "--units", "metric");
    assertEquals(ExitCode.FINE, run.code(), run.err());
    String script = Files.readString(dir.resolve("plans/oak street.groovy"));
    assertTrue(script.contains("plan 'Oak street', units: 'metric'"), script);
    assertTrue(run.out().contains("yardloom draw \"plans/oak street.groovy\""), run.out());
  }

  @Test
  void nameThatIsNoName_isWrongUse() {
    for (String name : List.of("it's", "..", "a$b", "")) {
      assertEquals(ExitCode.USE, Run.in(dir, "new", name).code(), name);
    }
    assertEquals(ExitCode.USE, Run.in(dir, "new", "a", "--like", "castle").code());
  }

  @Test
  void help_hasAnExample() {
    assertTrue(Run.in(dir, "new", "--help").out().contains("--like corner --units metric"));
  }
}
