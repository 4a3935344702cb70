package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two plans side by side. By hand: bed of 24 × 4 ft, 96 sq ft, becomes 24 × 6 ft, 144 sq ft; the
 * berry bed of 20 × 5 ft moves 3 ft east and 4 ft north, which is 5 ft (Pythagoras). Compost 3 in
 * on annual beds and 1 in on perennial ones, 324 sq ft an inch deep to the cubic yard, a tenth
 * more, up to the next half yard: (96 × 3 + 100 × 1) / 324 × 1.1 = 1.317, so 1.5; (144 × 3 + 100) /
 * 324 × 1.1 = 1.806, so 2.0. Chips 2 and 9 in: (96 × 2 + 100 × 9) / 324 × 1.1 = 3.707, so 4.0; (144
 * × 2 + 900) / 324 × 1.1 = 4.033, so 4.5.
 */
class CompareTest {
  private static final String YARD =
      """
      plan 'Change', units: 'us', client: 'demo household'
      def deep = param('deep', 2.inch, 'depth of chips')
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 70.ft), point(0.ft, 70.ft)])
      tap 'tap', point(2.ft, 3.ft), source: 'mains'
      sheetMulch { chips annual: deep, perennial: 9.inch ; compost annual: 3.inch, perennial: 1.inch }
      """;
  private static final String OLD =
      YARD
          + """
          bed 'kitchen bed', rect(10.ft, 10.ft, 24.ft, 4.ft), use: 'annual'
          bed 'berry bed', rect(40.ft, 30.ft, 20.ft, 5.ft), use: 'perennial'
          paving 'stones', rect(60.ft, 5.ft, 9.ft, 7.ft), surface: 'concrete'
          """;
  private static final String NEW =
      YARD
          + """
          bed 'kitchen bed', rect(10.ft, 10.ft, 24.ft, 6.ft), use: 'annual'
          bed 'berry bed', rect(43.ft, 34.ft, 20.ft, 5.ft), use: 'perennial'
          paving 'terrace', rect(60.ft, 5.ft, 9.ft, 7.ft), surface: 'concrete'
          structure 'shed', rect(60.ft, 50.ft, 8.ft, 10.ft), height: 8.ft
          """;

  @TempDir private Path dir;

  @BeforeEach
  void plans() throws IOException {
    Files.writeString(dir.resolve("old.groovy"), OLD);
    Files.writeString(dir.resolve("new.groovy"), NEW);
  }

  private String compare(String... args) {
    String[] all = new String[args.length + 1];
    all[0] = "compare";
    System.arraycopy(args, 0, all, 1, args.length);
    Run run = Run.in(dir, all);
    assertEquals(ExitCode.FINE, run.code(), run.err());
    return run.out().replace('\u00a0', ' ');
  }

  @Test
  void twoScripts_byHand() {
    String text = compare("old.groovy", "new.groovy");
    assertTrue(
        text.startsWith(
            """
            Elements
              added  structure "shed", 80 sq ft
              renamed  paving "stones" is now "terrace"
              moved  bed "berry bed": 3.0 ft east, 4.0 ft north (5.0 ft)
              resized  bed "kitchen bed", 96 sq ft → 144 sq ft: +48 sq ft, middle 1.0 ft north
            To buy more
            """),
        text);
    assertTrue(text.contains("compost: 1.50 cu yd → 2.00 cu yd  (+0.50 cu yd)"), text);
    assertTrue(text.contains("wood-chip mulch: 4.00 cu yd → 4.50 cu yd  (+0.50 cu yd)"), text);
    assertFalse(text.contains("To return"), text);
  }

  /** 3.6 in are 0.3 ft; half an inch is 0.04 ft, less than a tenth. */
  @Test
  void smallMoves_areSaidInTheirOneDigit_orAsLess() throws IOException {
    String bed = "bed 'kitchen bed', rect(%s, %s, 24.ft, 4.ft), use: 'annual'\n";
    Files.writeString(dir.resolve("at.groovy"), YARD + bed.formatted("10.ft", "10.ft"));
    Files.writeString(dir.resolve("west.groovy"), YARD + bed.formatted("9.7.ft", "10.ft"));
    Files.writeString(
        dir.resolve("hair.groovy"), YARD + bed.formatted("10.ft", "10.ft + 0.5.inch"));
    String west = compare("at.groovy", "west.groovy");
    assertTrue(west.contains("moved  bed \"kitchen bed\": 0.3 ft west\n"), west);
    String hair = compare("at.groovy", "hair.groovy");
    assertTrue(hair.contains("moved  bed \"kitchen bed\": less than 0.1 ft\n"), hair);
  }

  @Test
  void otherWayRound_isMirrored() {
    String text = compare("new.groovy", "old.groovy");
    assertTrue(
        text.startsWith(
            """
            Elements
              removed  structure "shed", 80 sq ft
              renamed  paving "terrace" is now "stones"
              moved  bed "berry bed": 3.0 ft west, 4.0 ft south (5.0 ft)
              resized  bed "kitchen bed", 144 sq ft → 96 sq ft: −48 sq ft, middle 1.0 ft south
            To return or order less
            """),
        text);
    assertTrue(text.contains("compost: 2.00 cu yd → 1.50 cu yd  (−0.50 cu yd)"), text);
    assertFalse(text.contains("To buy more"), text);
  }

  @Test
  void planAgainstItself_hasNoDifferences() throws IOException {
    assertEquals("No differences.\n", compare("old.groovy", "old.groovy"));
    String plan = Samples.FOLDER.resolve("regional-demo.groovy").toString();
    assertEquals("No differences.\n", compare(plan, plan));
    // The same of a plan of all trades, from what another process might have drawn of it.
    String full = Samples.FOLDER.resolve("seattle-corner.groovy").toString();
    Files.createDirectory(dir.resolve("drawn"));
    Files.writeString(
        dir.resolve("drawn/results.json"), Samples.drawn("seattle-corner").get("results.json"));
    assertEquals("No differences.\n", compare("drawn", full));
  }

  @Test
  void oneScriptWithTwoSetsOfParameters() {
    // (96 × 5 + 900) / 324 × 1.1 = 4.685, so 5.0 cu yd.
    String text = compare("old.groovy", "--new", "deep=5in");
    assertTrue(text.contains("wood-chip mulch: 4.00 cu yd → 5.00 cu yd  (+1.00 cu yd)"), text);
    assertFalse(text.contains("Elements"), text);
    assertEquals("No differences.\n", compare("old.groovy", "--old", "deep=2in"));
    assertEquals(ExitCode.USE, Run.in(dir, "compare", "old.groovy").code());
  }

  @Test
  void drawnFolders_compareLikeTheirScripts() {
    for (String plan : List.of("old", "new")) {
      Run.in(dir, "draw", plan + ".groovy", "--out", plan, "--as", "json");
    }
    assertEquals(
        compare("old.groovy", "new.groovy", "--all"),
        compare("old/old", "new/new/results.json", "--all"));
    assertEquals("No differences.\n", compare("old/old", "old.groovy"));
    Run set = Run.in(dir, "compare", "old/old", "new.groovy", "--old", "deep=3in");
    assertEquals(ExitCode.PLAN, set.code());
    Run none = Run.in(dir, "compare", "old", "new.groovy");
    assertEquals(ExitCode.PLAN, none.code());
    assertTrue(none.err().contains("there is no results.json here"), none.err());
  }

  private static final String SHEET = "Cardboard and its cover";

  /** Likely hours of that phase as the labour table prints them task by task. */
  private String sheetHours(String plan) throws IOException {
    Run.in(dir, "draw", plan + ".groovy", "--out", "hours", "--as", "csv");
    List<BigDecimal> tasks =
        Files.readAllLines(dir.resolve("hours/" + plan + "/tables/materials-labour.csv")).stream()
            .map(line -> line.split(","))
            .filter(cells -> cells[1].equals(SHEET))
            .map(cells -> new BigDecimal(cells[cells.length - 2]))
            .toList();
    assertTrue(tasks.size() >= 2, "cardboard and what covers it: " + tasks);
    return tasks.stream().reduce(BigDecimal.ZERO, BigDecimal::add).toPlainString();
  }

  @Test
  void hoursOfAPhase_areTheSumOfItsTasks() throws IOException {
    String text = compare("old.groovy", "new.groovy");
    String line = "  " + SHEET + ": " + sheetHours("old") + " h → " + sheetHours("new") + " h  (+";
    assertTrue(text.contains(line), line + "\n" + text);
  }

  @Test
  void usAgainstMetric_isRefused() throws IOException {
    Files.writeString(dir.resolve("metric.groovy"), OLD.replace("'us'", "'metric'"));
    Run run = Run.in(dir, "compare", "old.groovy", "metric.groovy");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("give both the same units"), run.err());
  }

  @Test
  void findingsComeAndGo() throws IOException {
    String wide = OLD.replace("rect(10.ft, 10.ft, 24.ft, 4.ft)", "rect(-3.ft, 10.ft, 24.ft, 4.ft)");
    Files.writeString(dir.resolve("out-of-lot.groovy"), wide);
    Run come = Run.in(dir, "compare", "old.groovy", "out-of-lot.groovy");
    int at = come.out().indexOf("Findings new");
    assertTrue(at > 0 && come.out().substring(at).contains("bed \"kitchen bed\""), come.out());
    Run gone = Run.in(dir, "compare", "out-of-lot.groovy", "old.groovy");
    assertTrue(gone.out().contains("Findings gone"), gone.out());
  }

  @Test
  void out_writesSheetChangeOrderAndDifferences() {
    compare("old.groovy", "new.groovy", "--out", "changes");
    Map<String, String> files = Run.files(dir.resolve("changes"));
    List<String> order = files.get("change-order.csv").replace('\u00a0', ' ').lines().toList();
    assertEquals("number,what,old,new,difference,agreed", order.get(0));
    assertEquals("1,\"structure \"\"shed\"\"\",,80 sq ft,added,____________", order.get(1));
    assertEquals(
        "4,\"bed \"\"kitchen bed\"\"\",96 sq ft,144 sq ft,\"+48 sq ft, middle 1.0 ft north\",____________",
        order.get(4));
    assertTrue(
        order.stream().anyMatch(l -> l.contains("compost\",1.50 cu yd,2.00 cu yd,+0.50 cu yd")),
        order::toString);
    String sheet = files.get("01-old-and-new.svg");
    for (String text : List.of("(1) shed, added", "(3) berry bed, moved", "demo household")) {
      assertTrue(sheet.contains(text), text);
    }
    // Without colour: old is dashed, new is not.
    assertTrue(sheet.matches("(?s).*class=\"old\"[^>]*stroke-dasharray.*"), "old is not dashed");
    assertTrue(sheet.contains("class=\"new\""));
    assertFalse(sheet.matches("(?s).*class=\"new\"[^>]*stroke-dasharray.*"), "new is dashed");
    assertTrue(files.get("02-change-order.svg").contains("Contractor: ___"));
    assertTrue(files.get("differences.csv").contains("beds,kitchen bed,"));
    // Once more over the old folder, byte for byte.
    compare("old.groovy", "new.groovy", "--out", "changes");
    assertEquals(files, Run.files(dir.resolve("changes")));
  }

  @Test
  void help_hasAnExample() {
    assertTrue(Run.in(dir, "compare", "--help").out().contains("--old bedWidth=4ft"));
  }
}
