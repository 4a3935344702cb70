package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole plans through the command line. */
class DemoPlanTest {
  private static final Path SAMPLES = Samples.FOLDER;

  @TempDir private Path dir;

  private Map<String, String> draw(Path script, String out, String... more) {
    String[] args = new String[4 + more.length];
    args[0] = "draw";
    args[1] = script.toString();
    args[2] = "--out";
    args[3] = out;
    System.arraycopy(more, 0, args, 4, more.length);
    Run run = Run.in(dir, args);
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve(out));
  }

  /** The first was drawn on a Turkish machine in Nepal; all samples' golden files agree with it. */
  @Test
  void demo_drawnByTheCommandInOtherLocaleAndZone_isTheSameToTheByte() {
    Map<String, String> first = Samples.drawn("san-francisco-slope");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("de-DE"));
      TimeZone.setDefault(TimeZone.getTimeZone("America/Chicago"));
      // From the same folder as the first: places in the output name the script as given.
      Run run =
          Run.in(
              Samples.HERE, "draw", "san-francisco-slope.groovy", "--out", dir.resolve("two") + "");
      assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
      assertEquals(first, Run.files(dir.resolve("two/san-francisco-slope")));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void urbana_drawn_hasSheetsTablesResultsAndFindings() {
    Map<String, String> files = Samples.drawn("urbana-yard");
    assertTrue(files.containsKey("results.json"), () -> files.keySet().toString());
    assertTrue(files.containsKey("findings.txt"));
    assertTrue(files.containsKey("sheets/02-layout.svg"));
    for (String table :
        new String[] {
          "materials-take-off",
          "materials-order",
          "planting",
          "sun-hours",
          "water-by-month",
          "irrigation"
        }) {
      assertTrue(
          files.containsKey("tables/" + table + ".csv"),
          () -> table + " is missing in " + files.keySet());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"urbana-yard", "seattle-corner", "san-francisco-slope", "desert-basins"})
  void demo_scriptFile_isUnderSeventyLines(String name) throws IOException {
    assertTrue(Files.readAllLines(SAMPLES.resolve(name + ".groovy")).size() < 70);
  }

  @Test
  void statements_inAnotherOrder_changeNothingButPlaces() throws IOException {
    String head = "plan 'Order', units: 'metric'\n";
    String lot = "lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 30.m), point(0.m, 30.m)])\n";
    String a = "bed('a', rect(3.m, 3.m, 4.m, 1.2.m), use: 'annual') { plant 'kale' }\n";
    String b = "bed('b', rect(3.m, 6.m, 4.m, 1.2.m), use: 'perennial') { plant 'chives' }\n";
    Path one = Files.writeString(dir.resolve("order.groovy"), head + lot + a + b);
    Map<String, String> first = draw(one, "one");
    Files.writeString(one, head + b + a + lot);
    Map<String, String> second = draw(one, "two");
    assertEquals(new TreeSet<>(first.keySet()), new TreeSet<>(second.keySet()));
    first.forEach(
        (file, text) -> {
          if (file.endsWith(".svg") || file.endsWith(".csv")) {
            assertEquals(text, second.get(file), file);
          }
        });
  }

  @Test
  void lot_mirrored_hasTheSameBill() throws IOException {
    String bed = "bed('b', rect(%s.ft, 6.ft, 12.ft, 4.ft), use: 'annual') { plant 'kale' }\n";
    String head =
        "plan 'Mirror', units: 'us'\n"
            + "lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 60.ft), point(0.ft, 60.ft)])\n";
    Path script = Files.writeString(dir.resolve("mirror.groovy"), head + String.format(bed, 5));
    Map<String, String> left = draw(script, "left");
    Files.writeString(script, head + String.format(bed, 40 - 5 - 12));
    Map<String, String> right = draw(script, "right");
    assertEquals(
        left.get("mirror/tables/materials-take-off.csv"),
        right.get("mirror/tables/materials-take-off.csv"));
    assertEquals(left.get("mirror/tables/planting.csv"), right.get("mirror/tables/planting.csv"));
  }

  @Test
  void draw_onePlanOfTwoWrong_writesNothing() throws IOException {
    Path good = Files.writeString(dir.resolve("good.groovy"), "plan 'Good'\n");
    Path bad = Files.writeString(dir.resolve("bad.groovy"), "plna 'Bad'\n");
    Run run = Run.in(dir, "draw", good.toString(), bad.toString(), "--out", "out");
    assertEquals(ExitCode.PLAN, run.code());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void set_parameter_changesThePlan() {
    Path script = SAMPLES.resolve("urbana-yard.groovy");
    String four = Samples.drawn("urbana-yard").get("tables/materials-take-off.csv");
    String three =
        draw(script, "three", "--as", "csv", "--set", "bedWidth=3ft")
            .get("urbana-yard/tables/materials-take-off.csv");
    assertFalse(four.equals(three));
  }
}
