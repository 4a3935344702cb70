package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.program.explain.Explanation;
import yardloom.program.explain.ScriptLines;

/** Every printed number says why. */
class ExplainTest {
  private static final Pattern HEAD = Pattern.compile("^\\[(\\d+)] (.*)$");

  /** 27 cu ft to the cubic yard, 12 in to the foot: 54 × 7 = 378 sq ft, × 3 / 324 = 3.5 cu yd. */
  private static final String YARD =
      """
      plan 'Why', units: 'us'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 80.ft), point(0.ft, 80.ft)])
      def deep = param('deep', 3.inch, 'depth of chips')
      bed 'kitchen bed', rect(10.ft, 10.ft, 54.ft, 7.ft), use: 'annual'
      bed 'berry bed', rect(10.ft, 30.ft, 36.ft, 9.ft), use: 'perennial'
      sheetMulch { chips annual: deep, perennial: 11.inch }
      """;

  @TempDir private Path dir;

  @BeforeEach
  void yard() throws IOException {
    Files.writeString(dir.resolve("why.groovy"), YARD);
  }

  private Run explain(String... what) {
    return Run.in(
        dir,
        Stream.concat(Stream.of("explain", "why.groovy"), Stream.of(what)).toArray(String[]::new));
  }

  static List<String> plans() {
    return Samples.plans();
  }

  @Test
  void words_askForTheMulchOfABed_tellItDownToTheScriptLines() {
    Run run = explain("mulch", "of", "kitchen", "bed");
    assertEquals(ExitCode.FINE, run.code(), run.err());
    String text =
        run.out().replace('\u00a0', ' ').replace(dir + "/", "").replaceAll("\\[\\d+]", "[n]");
    assertEquals(
        """
        Materials take-off  (materials-take-off / Kitchen bed / chips)
        Kitchen bed, Chips = 3.500 cu yd  [n]
            volume = area × depth
            = 378.00 sq ft × 3.000 in
            by: a layer of even depth (common practice, no source)
            area = 378.00 sq ft  [n]
                area = outline − sum over others of ground
                by: outlines on the plan, ground claimed twice counted once (given in the plan)
                outline of bed "kitchen bed" = 378.00 sq ft
                    why.groovy:4:1: bed 'kitchen bed', rect(10.ft, 10.ft, 54.ft, 7.ft), use: 'annual'
            depth = 3.000 in  [n]
                given on why.groovy:6:1: sheetMulch { chips annual: deep, perennial: 11.inch }
        """,
        text);
  }

  @Test
  void setting_changesWhatIsExplained() {
    // 378 × 6 / 324 = 7 cu yd.
    String text = explain("mulch of kitchen bed", "--set", "deep=6in").out();
    assertTrue(text.contains("Chips = 7.000\u00a0cu yd"), text);
  }

  @Test
  void addressTypedAsListed_tableRowAndColumn_isTheSameAnswer() {
    String byWords = explain("mulch of kitchen bed").out();
    assertEquals(byWords, explain("materials-take-off / Kitchen bed / chips").out());
    assertEquals(byWords, explain("Materials take-off", "/", "kitchen bed", "/", "Chips").out());
  }

  @Test
  void wordsThatFitTwoBeds_listBoth_andEachListedTextIsAnswered() {
    Run run = explain("mulch", "of", "bed");
    assertEquals(ExitCode.PLAN, run.code(), run.out());
    List<String> listed =
        run.err().lines().filter(l -> l.startsWith("  \"")).map(l -> l.split("\"")[1]).toList();
    assertEquals(
        List.of(
            "materials-take-off / Berry bed / chips", "materials-take-off / Kitchen bed / chips"),
        listed);
    for (String address : listed) {
      assertEquals(ExitCode.FINE, explain(address).code(), address);
    }
    // 36 × 9 = 324 sq ft, 11 in deep: 11 cu yd.
    assertTrue(run.err().contains("Berry bed / chips\"  11.00 cu yd"), run.err());
  }

  /** Each zone has a line of minutes: its heading tells whose they are. */
  @Test
  void rowsAlikeUnderSeveralHeadings_areAskedForByTheirHeading() throws IOException {
    Files.writeString(
        dir.resolve("why.groovy"),
        """
        plan 'Zones', units: 'us'
        site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
        climate 'urbana-il'
        lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
        tap 'bib', point(5.ft, 5.ft)
        wateringZone(['kale bed'])
        wateringZone(['berry bed'])
        bed('kale bed', rect(10.ft, 10.ft, 12.ft, 4.ft), use: 'annual') {
          drip emitter: 0.6.gph, spacing: 12.inch
          plant 'kale'
        }
        bed('berry bed', rect(10.ft, 20.ft, 20.ft, 3.ft), use: 'perennial') {
          drip emitter: 0.9.gph, spacing: 18.inch
          plant 'garden strawberry'
        }
        """);
    for (String zone : List.of("Zone 1: kale bed", "Zone 2: berry bed")) {
      Run page = explain("timer-page / " + zone + ", Minutes / m7");
      assertTrue(page.out().contains(zone + ", Minutes, Jul = "), page.out() + page.err());
      Run table = explain("timetable / " + zone + ", Jul / minutes");
      assertTrue(table.out().contains(zone + ", Jul, "), table.out() + table.err());
    }
    Run words = explain("minutes of kale bed in jul");
    assertTrue(words.out().contains("Zone 1: kale bed"), words.out() + words.err());
  }

  /** 54 × 7 = 378 sq ft in three tables: one of them answers. */
  @Test
  void wordsThatFitOneFigureInManyTables_areAnswered() {
    Run run = explain("area of kitchen bed");
    assertEquals(ExitCode.FINE, run.code(), run.err());
    assertTrue(run.out().contains("Area = 378.00"), run.out());
  }

  @Test
  void misspeltQuestion_namesTheNearest() {
    Run run = explain("mulsh of kitchen bed");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("\"mulch\" for mulsh"), run.err());
    Run row = explain("materials-take-off / Kitchn bed / chips");
    assertEquals(ExitCode.PLAN, row.code());
    assertTrue(row.err().contains("nearest: materials-take-off / Kitchen bed"), row.err());
    Run column = explain("materials-take-off / Kitchen bed / chip");
    assertTrue(column.err().contains("nearest: materials-take-off / Kitchen bed / chips"));
    Run number = explain("99999");
    assertEquals(ExitCode.PLAN, number.code());
    assertTrue(number.err().contains("there is no calculation [99999]"), number.err());
  }

  @Test
  void withoutAQuestion_tablesWithRowsAndColumnsAreListed() {
    String text = explain().out();
    int at = text.indexOf("materials-take-off: Materials take-off\n");
    assertTrue(at >= 0, text);
    assertTrue(text.substring(at).contains("rows     Berry bed | Kitchen bed | all"), text);
    assertTrue(text.substring(at).contains("columns  area | cardboard | "), text);
    assertFalse(explain("beds").out().contains("berry bed / use"), "words are no figures");
  }

  /** Columns of a range bear no name that anybody would ask for; months have long names. */
  @Test
  void tableAndRowInWords_listTheColumns() {
    Explanation explanation = new Explanation(Samples.outcome("urbana-yard"), new ScriptLines(dir));
    Explanation.Answer cost = explanation.of("total cost");
    assertFalse(cost.found());
    for (String column : List.of("p10", "p50", "p90")) {
      assertTrue(cost.text().contains("\"materials-cost / total / " + column + "\""), cost.text());
    }
    Explanation.Answer july = explanation.of("gross need in July");
    assertTrue(july.found(), july.text());
    assertTrue(july.text().startsWith("Water by month  (water-by-month / Jul / "), july.text());
  }

  @Test
  void numberWithoutACalculation_saysSo() {
    // 378 / 6400 is 5.9 %.
    String text = explain("areas / Kitchen bed / share").out();
    assertTrue(text.contains("Share of lot = 6 %"), text);
    assertTrue(text.contains("no calculation is behind it"), text);
  }

  @Test
  void help_hasAnExample() {
    assertTrue(Run.in(dir, "explain", "--help").out().contains("mulch of kitchen bed"));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyNumberOfTheAppendix_isExplainedAsPrinted(String plan) {
    Explanation explanation = new Explanation(Samples.outcome(plan), new ScriptLines(Path.of("")));
    List<String> lines = Samples.drawn(plan).get("calculations.txt").lines().toList();
    int asked = 0;
    for (int i = lines.indexOf("Calculations"); i < lines.size(); i++) {
      Matcher head = HEAD.matcher(lines.get(i));
      if (head.matches()) {
        asked++;
        String told = explanation.of(head.group(1)).text();
        assertTrue(told.startsWith(head.group(2) + "  [" + head.group(1) + "]\n"), told);
        String formula = lines.get(i + 1).strip().replaceAll("  \\{\\d+}$", "");
        assertTrue(told.contains(formula) || told.contains("given on"), told);
      }
    }
    assertTrue(asked > 100, plan + ": " + asked);
    assertFalse(explanation.of("[" + (asked + 1) + "]").found());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyDerivedCell_isReachedByTableRowAndColumn(String plan) {
    Outcome outcome = Samples.outcome(plan);
    Explanation explanation = new Explanation(outcome, new ScriptLines(Samples.FOLDER));
    int told = 0;
    for (Table table : outcome.tables()) {
      long derived =
          table.rows().stream().flatMap(List::stream).filter(c -> c.why().isPresent()).count();
      if (derived == 0) {
        continue;
      }
      // The list of a table names all its figures; each is typed as it stands there.
      for (String line : explanation.of(table.id()).text().lines().toList()) {
        String address = line.split("\"")[1];
        String text = explanation.of(address).text();
        assertTrue(text.contains("(" + address + ")"), text);
        derived -= text.contains("no calculation") ? 0 : 1;
        told++;
      }
      assertEquals(0, derived, table.id() + " has derived cells that cannot be asked for");
    }
    assertTrue(told > 300, plan + ": " + told);
  }
}
