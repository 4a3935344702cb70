package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A yard made in two years, from script to printed tables, worked by hand. Rates are those of the
 * shipped labour table (hours for one square foot, foot, cubic yard or piece, with their sources):
 * marks 0.5, stake out 0.002, mow 0.001, cut edge 0.03, soak 0.001, cardboard 0.008, spread 1, rake
 * 0.001, visit 1. Sheets of 4 by 3 ft lap by 0.5 ft: one row of up(26.5 / 2.5) = 11 on a strip of 4
 * ft, two of up(29.5 / 2.5) = 12 on one of 6 ft.
 */
class StagesByHandTest {
  private static final String YARD =
      """
      plan 'Stages', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
      work crew: 2, hoursPerDay: 5, visits: 2START
      price 'labour', 24.money, per: 'h'
      price 'wood-chip mulch', 20.money, per: 'yd3'
      price 'compost', 31.money, per: 'yd3'
      price 'cardboard, sheets', 0.5.money
      item 'gate stones', count: 5, price: 11.money, phase: 'earth'
      """;

  private static final String FIRST =
      """
        bed('south', rect(5.ft, 5.ft, 27.ft, 4.ft), use: 'perennial') { mulch 3.inch }
        task 'carry sods', hours: 7, phase: 'earth'
      """;

  private static final String SECOND =
      """
        bed('north', rect(5.ft, 40.ft, 30.ft, 6.ft), use: 'perennial') { mulch 4.inch }
        item 'bench', count: 3, price: 40.money, hours: 2, phase: 'finish'
      """;

  private static final String TWO =
      YARD.replace("START", "")
          + "stage('as it is', built: true) {\n"
          + "  bed('kept', rect(45.ft, 5.ft, 4.ft, 11.ft), use: 'perennial') { plant 'sage' }\n}\n"
          + "stage('back', from: '2027-04-05') {\n"
          + FIRST
          + "}\nstage('front', from: '2028-05-01') {\n"
          + SECOND
          + "}\n";

  @TempDir private static Path dir;

  private static Map<String, String> two;
  private static Map<String, String> atOnce;
  private static Map<String, String> grown;

  @BeforeAll
  static void draw() throws IOException {
    two = drawn("two", TWO);
    grown = drawn("grown", GROWN);
    atOnce = drawn("at-once", YARD.replace("START", ", start: '2027-04-05'") + FIRST + SECOND);
  }

  private static Map<String, String> drawn(String name, String script) throws IOException {
    Files.writeString(dir.resolve(name + ".groovy"), script);
    Run run = Run.in(dir, "draw", name + ".groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    Map<String, String> tables = new TreeMap<>();
    Run.files(dir.resolve("out/" + name))
        .forEach((file, text) -> tables.put(file, text.replace('\u00a0', ' ')));
    return tables;
  }

  private static List<String> rows(Map<String, String> of, String table) {
    return of.get("tables/" + table + ".csv").lines().skip(1).toList();
  }

  /**
   * South 27 × 4 = 108 sq ft: chips 108 × 3/12 = 27 cu ft = 1 cu yd, compost 9 cu ft. North 30 × 6
   * = 180 sq ft: chips 60 cu ft, compost 15. Hours: 0.5 + 108 × (0.002 + 0.0004 + 0.001 + 0.008 +
   * 0.001) + 62 ft × 0.03 + 1/3 + 1 cu yd + 2 visits + 7 = 14.03; 0.5 + 180 × 0.0124 + 72 × 0.03 +
   * 5/9 + 20/9 + 2 + 3 × 2 = 15.67. Cost: 14.0325 × 24 + 1.5 × 20 + 0.5 × 31 + 13 × 0.5 + 5 × 11 =
   * 443.79; 15.6698 × 24 + 2.5 × 20 + 1 × 31 + 27 × 0.5 + 3 × 40 = 590.58; together 1034.37, so of
   * the two only the larger remainder is rounded up. Marks three days from Monday; 11.53 h of all
   * else but the visits are 1.15 days of ten hours, and 13.17 h 1.32: Thursday and Friday.
   */
  @Test
  void stages_haveTheirDaysAndFigures() {
    assertEquals(
        List.of(
            "back,2027-04-05,2027-04-09,1,108,0,0.33,1.00,14.0,444",
            "front,2028-05-01,2028-05-05,1,180,0,0.56,2.22,15.7,590",
            "all stages,,,2,288,0,0.89,3.22,29.7,1034"),
        rows(two, "stages"));
  }

  /**
   * With 7.03 h for the sods the stages take 14.0625 and 15.6698 h, together 29.7323: one by one
   * they would be 14.1 and 15.7 over 29.7. Rounded down they leave a tenth, which goes to the front
   * with its remainder of 0.07, not to the back with 0.06.
   */
  @Test
  void hours_addUpAsPrinted() throws IOException {
    assertEquals(
        List.of("back 14.0", "front 15.7", "all stages 29.7"),
        rows(drawn("odd", TWO.replace("hours: 7,", "hours: 7.03,")), "stages").stream()
            .map(r -> r.split(","))
            .map(r -> r[0] + " " + r[8])
            .toList());
  }

  /**
   * All beds of the plan are made in a stage and lie under its hatch, so the legend of the sheet
   * has the stages and no bed; the house and the path that are in none of them keep their lines.
   */
  @Test
  void sheet_explainsTheHatchesThatHideTheBeds() throws IOException {
    String script =
        TWO
            + "building 'house', rect(20.ft, 15.ft, 20.ft, 12.ft), eaves: 9.ft\n"
            + "path 'walk', line([point(41.ft, 20.ft), point(59.ft, 20.ft)]), width: 3.ft,"
            + " standing: true\n";
    Files.writeString(dir.resolve("legend.groovy"), script);
    Run run = Run.in(dir, "draw", "legend.groovy", "--sheets", "stages", "--as", "svg");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    String sheet =
        Run.files(dir.resolve("yardloom-out/legend")).entrySet().stream()
            .filter(f -> f.getKey().endsWith("stages.svg"))
            .findFirst()
            .orElseThrow()
            .getValue();
    List<String> said =
        Pattern.compile("<text[^>]*>([^<]*)")
            .matcher(sheet)
            .results()
            .map(m -> m.group(1))
            .toList();
    assertTrue(said.contains("Stage 1: back") && said.contains("Stage 2: front"), said.toString());
    assertTrue(said.contains("Building") && said.contains("Path, existing"), said.toString());
    assertFalse(said.contains("Bed"), said.toString());
  }

  /** Chips 1 × 1.1 up to 1.5 and 2.22 × 1.1 = 2.44 up to 2.5; compost 0.37 to 0.5, 0.61 to 1. */
  @Test
  void orders_areRoundedUpInEachStage() {
    assertEquals(
        List.of(
            "back,\"cardboard, sheets\",11,13",
            "back,compost,0.33,0.50",
            "back,wood-chip mulch,1.00,1.50",
            "front,\"cardboard, sheets\",24,27",
            "front,compost,0.56,1.00",
            "front,wood-chip mulch,2.22,2.50"),
        rows(two, "materials-order").stream()
            .map(r -> r.replaceAll("Cardboard and its cover,|Finish mulch,", ""))
            .map(r -> r.replaceAll(",(\"10 %.*\"|10 % .*)$", ""))
            .map(r -> r.replaceAll(",,,", ",").replaceAll(",+$", ""))
            .toList());
  }

  /**
   * The gate stones stand outside of all stages, so they are of the first. Back: 6.50 + 15.50 + 30
   * + 55 + 336.78 over 444, so labour and the first half go up; front: 13.50 + 31 + 50 + 120 +
   * 376.08 over 590, so nothing does.
   */
  @Test
  void costs_addUpToTheWhole() {
    assertEquals(
        List.of(
            "\"cardboard, sheets\",7,13,20",
            "compost,15,31,46",
            "wood-chip mulch,30,50,80",
            "gate stones,55,,55",
            "bench,,120,120",
            "labour,337,376,713",
            "total,444,590,1034"),
        rows(two, "stage-costs").stream().sorted(StagesByHandTest::asWritten).toList());
    assertEquals("total,1034", first(rows(two, "materials-cost"), "total"));
  }

  private static int asWritten(String a, String b) {
    return Integer.compare(place(a), place(b));
  }

  private static int place(String row) {
    List<String> order = List.of("\"card", "compost", "wood", "gate", "bench", "labour", "total");
    return (int) order.stream().takeWhile(o -> !row.startsWith(o)).count();
  }

  private static String first(List<String> rows, String name) {
    return rows.stream()
        .filter(r -> r.startsWith(name + ","))
        .map(r -> name + "," + r.split(",")[1])
        .findFirst()
        .orElseThrow();
  }

  /** Each stage calls for the marks and is looked after; all else is what it is at once. */
  @Test
  void take_offAndHoursAddUp_butForWhatComesTwice() {
    assertEquals("288,35,0.89,3.22", takeOff(rows(atOnce, "materials-take-off")));
    assertEquals(
        List.of("108,11,0.33,1.00", "180,24,0.56,2.22"),
        rows(two, "materials-take-off").stream()
            .filter(r -> r.contains("all surfaces"))
            .map(r -> takeOff(List.of(r.substring(r.indexOf(',') + 1))))
            .toList());
    // 14.03 + 15.67 less 0.5 for the marks and 2 visits of an hour is 27.20.
    assertTrue(
        rows(atOnce, "materials-labour").stream().anyMatch(r -> r.matches("\"all.*,27\\.2,.*")),
        atOnce.get("tables/materials-labour.csv"));
  }

  private static String takeOff(List<String> rows) {
    String[] cells =
        rows.stream()
            .filter(r -> r.contains("all surfaces"))
            .findFirst()
            .orElseThrow()
            .replace("\"all surfaces, exact\"", "all")
            .split(",");
    return cells[2] + "," + cells[3] + "," + cells[5] + "," + cells[7];
  }

  /** Nothing of what stands is bought or worked, and its sage is watered and picked. */
  @Test
  void built_isNotBought() {
    assertFalse(two.get("tables/materials-take-off.csv").contains("Kept"));
    assertFalse(two.get("tables/materials-orders-by-phase.csv").contains("sage"));
    assertFalse(two.get("tables/materials-labour.csv").contains("plant from pots"));
    assertTrue(two.get("tables/planting.csv").contains("sage (existing)"));
  }

  /** Law: one stage that holds everything prints what the plan without a stage prints. */
  @Test
  void oneStage_isNoStage() throws IOException {
    Map<String, String> one =
        drawn(
            "at-once-staged",
            YARD.replace("START", ", start: '2027-04-05'")
                + "stage('all') {\n"
                + FIRST
                + SECOND
                + "}\n");
    int compared = 0;
    for (Map.Entry<String, String> table : atOnce.entrySet()) {
      // Findings name script lines.
      if (table.getKey().startsWith("tables/") && !table.getKey().endsWith("findings.csv")) {
        assertEquals(table.getValue(), ungrouped(one.get(table.getKey())), table.getKey());
        compared++;
      }
    }
    assertTrue(compared > 12, atOnce.keySet().toString());
  }

  private static String ungrouped(String table) {
    List<String> lines = new ArrayList<>();
    boolean grouped = table.startsWith("group,");
    table.lines().forEach(l -> lines.add(grouped ? l.substring(l.indexOf(',') + 1) : l));
    return String.join("\r\n", lines) + "\r\n";
  }

  private static final String GROWN =
      """
      plan 'Grown', units: 'us'
      site 'Trial', latitude: 40.1.deg, longitude: -88.2.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '04-25', first: '10-14', source: 'demo'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
      work crew: 2, hoursPerDay: 6, visits: 2
      tap 'tap', point(2.ft, 2.ft), source: 'mains'
      stage('kept', built: true) {
        bed('old', rect(50.ft, 10.ft, 4.ft, 9.ft), use: 'perennial') { DRIP; plant 'lavender' }
      }
      stage('one', from: '2027-03-15') {
        bed('south', rect(10.ft, 10.ft, 20.ft, 4.ft), use: 'perennial') { DRIP; plant 'sage' }
        tree('early', point(8.ft, 30.ft), crown: 8.ft, height: 8.ft, leaf: 'deciduous') { species 'apple (semi-dwarf)' }
      }
      stage('two', from: '2028-04-03') {
        bed('north', rect(10.ft, 40.ft, 30.ft, 4.ft), use: 'perennial') { DRIP; plant 'sage' }
        tree('late', point(48.ft, 30.ft), crown: 9.ft, height: 9.ft, leaf: 'deciduous') { species 'apple (semi-dwarf)' }
      }
      """
          .replace("DRIP", "drip emitter: 0.4.gph, spacing: 12.inch, rowSpacing: 16.inch");

  /**
   * Marks take three days from Monday 15 March and 3 April 2028. Till the plants are in the crew
   * has 5.6 h to do in the first year and 11.6 in the second, less than the 12 of a day: all is
   * planted on the fourth. Sage is ordered a week before it is planted.
   */
  @Test
  void grown_eachStageHasItsSeasons() {
    assertEquals(
        List.of("one 2027-03-18", "one 2027-03-18", "two 2028-04-06", "two 2028-04-06"),
        rows(grown, "materials-phases").stream()
            .filter(r -> r.contains(",Plant trees and shrubs,") || r.contains(",Plant,4"))
            .map(r -> r.split(",")[0] + " " + r.split(",")[5])
            .toList());
    assertEquals(
        List.of("one 26 2027-03-11", "two 40 2028-03-30"),
        rows(grown, "materials-orders-by-phase").stream()
            .filter(r -> r.contains("sage"))
            .map(r -> r.replaceAll("^(one|two),.*\",(\\d+),,7,(.*)$", "$1 $2 $3"))
            .toList());
    // Each kind is planted in both years: the first 45 days are those of its own stage.
    assertEquals(
        List.of(
            "one,south,sage,2027-03-18,2027-03-31",
            "one,south,sage,2027-04-01,2027-04-16",
            "one,south,sage,2027-04-17,2027-05-01",
            "two,north,sage,2028-04-06,2028-04-19",
            "two,north,sage,2028-04-20,2028-05-05",
            "two,north,sage,2028-05-06,2028-05-20"),
        rows(grown, "first-weeks").stream()
            .filter(r -> r.contains("sage"))
            .map(r -> String.join(",", List.of(r.split(",")).subList(0, 5)))
            .toList());
  }

  /** Drip lies on 18 March and 7 April: water comes from the next morning on. */
  @Test
  void grown_zonesGrowWithTheStages() {
    assertEquals(
        List.of(
            "one,zone 1,grows,south,old,north,2027-03-19",
            "two,zone 1,grows,north,\"south, old\",,2028-04-08"),
        rows(grown, "zones-by-stage"));
  }

  /** What stands is looked after with the first stage, and lines are drained once for all. */
  @Test
  void grown_careCountsFromEachPlanting() {
    List<String> care = rows(grown, "care");
    assertEquals(
        List.of("one: 2027-03-18", "two: 2028-04-06"),
        care.stream()
            .filter(r -> r.contains(",Plant,\"apple (semi-dwarf), sage\","))
            .map(r -> r.substring(1, 6) + r.replaceAll(".*,Plant,\"[^\"]*\",([0-9-]+),.*", "$1"))
            .toList());
    assertEquals(1, care.stream().filter(r -> r.contains("Drain the lines")).count());
    assertEquals(
        List.of("one", "two"),
        care.stream()
            .filter(r -> r.contains("Trim woody herbs"))
            .map(r -> r.substring(0, 3))
            .toList());
    assertTrue(care.stream().anyMatch(r -> r.startsWith("one") && r.contains("lavender")));
    assertTrue(care.stream().noneMatch(r -> r.startsWith("two") && r.contains("lavender")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stage('a') { } ; stage('a') { } | is already given at",
        "stage('a') { stage('b') { } } | stands inside 'a'",
        "stage('a', from: '2028-04-01') { } ; stage('b', from: '2027-04-01') { } | not after stage",
        "stage('a', from: 'May') { } | is not a date of the form",
        "stage('a', built: true, from: '2027-04-01') { } | is built, so it has no first day",
      })
  void whatCannotBe_isRefused(String line, String said) throws IOException {
    Files.writeString(dir.resolve("bad.groovy"), YARD.replace("START", "") + line);
    Run run = Run.in(dir, "check", "bad.groovy");
    assertEquals(ExitCode.PLAN, run.code(), run.out() + run.err());
    assertTrue(run.err().contains(said), run.err());
  }
}
