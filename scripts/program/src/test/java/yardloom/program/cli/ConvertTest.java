package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans as JSON: written from scripts, and read wherever a script is. */
class ConvertTest {
  @TempDir Path folder;

  static Stream<String> plans() {
    return Stream.concat(
        Samples.plans().stream().map(p -> Samples.FOLDER.resolve(p + ".groovy").toString()),
        Stream.of(
            Path.of("src/test/resources/yardloom/program/appendix/rare-words.groovy")
                .toAbsolutePath()
                .toString()));
  }

  /** What is worked out and drawn depends on the plan alone, so one plan gives the same sheets. */
  @ParameterizedTest
  @MethodSource("plans")
  void form_ofEachPlan_isReadAsTheSamePlan(String script) {
    Path plan = Path.of(script);
    String name = plan.getFileName().toString().replace(".groovy", ".plan.json");
    Toolkit toolkit = Toolkit.load();
    String said = PlanText.of(toolkit.read(plan, Map.of()), false);
    Run run = Run.in(folder, "convert", script, "--out", name);
    assertEquals(0, run.code(), run.err());
    assertEquals(said, PlanText.of(toolkit.read(folder.resolve(name), Map.of()), false));
  }

  private static final String YARD =
      """
      plan title: 'Two rows', units: 'us', date: '2026-03-01'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m,
          zone: 'America/Chicago'
      def deep = param('deep', 3.inch, 'depth of compost')
      lot corners: [point(0.ft, 0.ft), point(50.ft, 0.ft), point(50.ft, 70.ft), point(0.ft, 70.ft)]
      Shape strip(Length at) { rect(at, 10.ft, 4.ft, 21.ft) }
      for (i in 1..2) {
        bed("row ${i}", strip(i * 9.ft), use: 'annual') {
          compost deep
        }
      }
      """;

  @Test
  void yard_fromScriptAndFromJson_drawsTheSameFiles() throws Exception {
    Files.writeString(folder.resolve("rows.groovy"), YARD);
    Run script = Run.in(folder, "draw", "rows.groovy", "--out", "a");
    assertTrue(script.code() <= ExitCode.FINDINGS, script.err());
    assertEquals(0, Run.in(folder, "convert", "rows.groovy", "--places").code());
    assertEquals(script.code(), Run.in(folder, "draw", "rows.plan.json", "--out", "b").code());
    Map<String, String> named = new TreeMap<>(Run.files(folder.resolve("a")));
    // The test runs the program in its own folder, by full name.
    named.replaceAll((name, text) -> text.replace(folder + "/", ""));
    assertEquals(named, Run.files(folder.resolve("b")));
    assertEquals(0, Run.in(folder, "convert", "rows.groovy").code());
    assertEquals(script.code(), Run.in(folder, "draw", "rows.plan.json", "--out", "c").code());
    assertEquals(
        withoutPlaces(Run.files(folder.resolve("a"))),
        withoutPlaces(Run.files(folder.resolve("c"))));
  }

  private Map<String, String> withoutPlaces(Map<String, String> files) {
    Map<String, String> made = new TreeMap<>();
    files.forEach(
        (name, text) ->
            made.put(
                name,
                text.replace(folder + "/", "")
                    .replaceAll("rows\\.(groovy|plan\\.json):\\d+(:\\d+)?", "@")));
    return made;
  }

  /**
   * A plan that no script made. By hand: 6.5 ft × 18 ft = 117 sq ft; 4 in deep = 39 cu ft = 1.44 cu
   * yd.
   */
  @Test
  void plan_writtenAsJson_givesTheTableWorkedByHand() throws Exception {
    Files.writeString(
        folder.resolve("hand.plan.json"),
        """
        {"form": "yardloom-plan-1", "plan": [
          {"word": "plan", "with": {"title": "By hand", "units": "us"}},
          {"word": "param", "with": {"name": "deep", "value": "4 inch", "help": "of compost"}},
          {"word": "lot", "with": {"corners": [["0 ft", "0 ft"], ["40 ft", "0 ft"],
            ["40 ft", "60 ft"], ["0 ft", "60 ft"]]}},
          {"word": "bed", "with": {"name": "long", "use": "annual",
            "shape": {"word": "rect", "with":
              {"x": "10 ft", "y": "20 ft", "width": "6.5 ft", "depth": "18 ft"}}},
            "block": [{"word": "compost", "with": {"depth": {"param": "deep"}}}]}
        ]}
        """);
    Run run = Run.in(folder, "draw", "hand.plan.json", "--as", "csv", "--out", "o");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    String takeOff = Files.readString(folder.resolve("o/hand/tables/materials-take-off.csv"));
    assertTrue(takeOff.lines().anyMatch(l -> l.startsWith("Long,") && l.contains("117")), takeOff);
    assertTrue(
        takeOff.lines().anyMatch(l -> l.startsWith("Long,") && l.contains(",4.0,1.44,")), takeOff);
    // 5 in: 48.75 cu ft = 1.81 cu yd.
    Run.in(folder, "draw", "hand.plan.json", "--as", "csv", "--out", "p", "--set", "deep=5in");
    takeOff = Files.readString(folder.resolve("p/hand/tables/materials-take-off.csv"));
    assertTrue(
        takeOff.lines().anyMatch(l -> l.startsWith("Long,") && l.contains(",5.0,1.81,")), takeOff);
  }

  @Test
  void plan_asJson_isExplainedComparedAndChecked() throws Exception {
    Files.writeString(folder.resolve("rows.groovy"), YARD);
    Run.in(folder, "convert", "rows.groovy");
    Run why = Run.in(folder, "explain", "rows.plan.json", "area of row 2");
    assertEquals(0, why.code(), why.err());
    // 4 ft × 21 ft.
    assertTrue(why.out().contains("Area = 84.00"), why.out());
    Run same = Run.in(folder, "compare", "rows.groovy", "rows.plan.json", "--out", "changes");
    assertEquals(0, same.code(), same.err());
    assertTrue(Run.in(folder, "check", "rows.plan.json").code() <= ExitCode.FINDINGS);
  }

  /** Three rows of 4 ft fill 16 ft with gaps of 2 ft: compost 1, 2 and 3 in deep. */
  @Test
  void block_thatSaysSomethingElseForEachRow_isKeptForEach() throws Exception {
    Files.writeString(
        folder.resolve("rows.groovy"),
        """
        lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
        def n = 0
        beds('row', rect(10.ft, 10.ft, 30.ft, 16.ft), width: 4.ft, gap: 2.ft, use: 'annual') {
          n += 1
          compost n.inch
        }
        """);
    assertEquals(0, Run.in(folder, "convert", "rows.groovy").code());
    String form = Files.readString(folder.resolve("rows.plan.json"));
    assertTrue(form.contains("\"blocks\": [["), form);
    for (String inch : new String[] {"1 inch", "2 inch", "3 inch"}) {
      assertTrue(form.contains("{\"depth\": \"" + inch + "\"}"), form);
    }
    Toolkit toolkit = Toolkit.load();
    assertEquals(
        PlanText.of(toolkit.read(folder.resolve("rows.groovy"), Map.of()), false),
        PlanText.of(toolkit.read(folder.resolve("rows.plan.json"), Map.of()), false));
  }

  @Test
  void example_ofTheGuide_isReadWithoutErrors() throws Exception {
    String page = Files.readString(Path.of("..", "guide", "json.md"));
    String example = page.substring(page.indexOf("```json\n") + 8);
    Files.writeString(
        folder.resolve("guide.plan.json"), example.substring(0, example.indexOf("```")));
    Run run = Run.in(folder, "check", "guide.plan.json");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
  }

  @Test
  void mistakes_ofUse_areTold() throws Exception {
    Files.writeString(folder.resolve("rows.groovy"), YARD);
    Run name = Run.in(folder, "convert", "rows.groovy", "--out", "rows.groovy");
    assertEquals(ExitCode.PLAN, name.code());
    assertTrue(name.err().contains("a plan in JSON form is called NAME.plan.json"), name.err());
    assertEquals(YARD, Files.readString(folder.resolve("rows.groovy")));
    Files.writeString(folder.resolve("bad.plan.json"), "{\n  \"form\": 1\n}");
    Run bad = Run.in(folder, "check", "bad.plan.json");
    assertEquals(ExitCode.PLAN, bad.code());
    assertTrue(bad.err().contains("bad.plan.json:2:11: a plan begins with"), bad.err());
  }
}
