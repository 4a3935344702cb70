package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.language.limit.RunLimits;

class PlanRunnerTest {
  @TempDir Path folder;

  private final PlanRunner runner =
      new PlanRunner(TestWords.lexicon(), RunLimits.standard(), (s, w) -> Optional.empty());

  private Plan run(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("my-plan.groovy"), text);
    return runner.run(file, Map.of());
  }

  @Test
  void plainPlan_bedsAndBlocks_areDrawn() throws IOException {
    Plan plan =
        run(
            """
            def w = param('width', 4.ft, 'width of beds')
            def place = rect(0.m, 0.m, w * 2, 1.m)
            def b = bed 'a', place, use: 'annual', depth: 6.inch, {
              plant 'kale', spacing: 1.ft
              plant 'leek'
            }
            for (i in 1..3) {
              bed "row ${i}", b.shape.moved(i * 3.m, 0.m), use: 'perennial'
            }
            """);
    assertEquals(4, plan.elements().size());
  }

  @Test
  void shapeAlgebra_onHandlesShapesLinesPoints_givesValues() throws IOException {
    Plan plan =
        run(
            """
            def b = bed('a', rect(0.m, 0.m, 4.m, 2.m), use: 'annual')
            def two = b.mirrored(point(5.m, 0.m), point(5.m, 1.m))
            note "${(b + two).area} ${(two & b.shape).area} ${b.nearest(point(9.m, 1.m)).x}"
            def south = b.shape.side('south')
            note "${south.strip(0.m, 1.m).area} ${south.strip(1.m).area}"
            def line = south.mirrored(point(0.m, 5.m), point(1.m, 5.m))
            note "${line.start.y} ${line.nearest(point(2.m, 0.m)).y}"
            note "${point(1.m, 2.m).mirrored(point(0.m, 0.m), point(1.m, 0.m)).y}"
            """);
    assertEquals("16 m² 0 m² 4 m", plan.parameters().get("note 3"));
    assertEquals("4 m² 4 m²", plan.parameters().get("note 5"));
    assertEquals("10 m 10 m", plan.parameters().get("note 7"));
    assertEquals("-2 m", plan.parameters().get("note 8"));
  }

  @Test
  void language_loopsHelpersClosuresMaps_work() throws IOException {
    Plan plan =
        run(
            """
            Shape strip(int n, Length gap) {
              if (n > 1) {
                return rect(gap * n, 0.m, 1.m, 1.m)
              }
              rect(0.m, 0.m, 1.m, 1.m)
            }
            def total = 0.m
            def names = ['x', 'y', 'z']
            List<Handle> all = []
            names.eachWithIndex { n, i ->
              all << bed(n, strip(i, 3.m), use: 'annual')
            }
            for (h in all) {
              total = total + h.shape.perimeter
            }
            note "total ${total} of ${all.size()}"
            def sizes = [small: 1.ft, big: 2.ft]
            note "${sizes.big} ${sizes['small']}"
            for (e in sizes) { note "${e.key} is ${e.value}" }
            def widths = (1..3).collect { it * 2.ft }
            note "sum ${widths.sum()}"
            def plot = { String n, Length x -> bed n, rect(x, 0.m, 1.m, 1.m), use: 'annual' }
            plot('p1', 10.m)
            plot('p2', 20.m)
            double half = 1
            int k = 0
            while (k < 3) { k++; half = half / 2 }
            note "half $half ${7 / 2} ${7 % 4} ${1..0} ${'abc'[0]}"
            def both = all[0].shape + all[1].shape & rect(0.m, 0.m, 0.5.m, 1.m)
            note "area ${both.area} ${both.area > 0.2.sqm ? 'big' : 'small'}"
            """);
    assertEquals(5, plan.elements().size());
    assertEquals("total 12 m of 3", plan.parameters().get("note 16"));
    assertEquals("0.6096 m 0.3048 m", plan.parameters().get("note 18"));
    assertEquals("sum 3.6576 m", plan.parameters().get("note 21"));
    assertEquals("half 0.125 3.5 3 [] a", plan.parameters().get("note 28"));
    assertEquals("area 0.5 m² big", plan.parameters().get("note 30"));
  }

  @Test
  void mistakes_severalInOneScript_allReportedWithPlaces() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () ->
                run(
                    """
                    bed 'a', rect(0.m, 0.m, 1.m, 1.m), use: 'annual', {
                      plnt 'kale'
                    }
                    bed 'b', 3
                    note 'a', 5
                    note 'a' + (3.ft + 2.gpm)
                    """));
    List<String> found =
        e.problems().stream()
            .map(p -> p.place().line() + ":" + p.place().column() + " " + p.code())
            .toList();
    assertEquals(
        List.of(
            "2:3 UNKNOWN_WORD",
            "4:1 MISSING_OPTION",
            "4:10 WRONG_TYPE",
            "5:11 WRONG_TYPE",
            "6:12 WRONG_TYPE"),
        found);
  }

  private Plan run(String text, Map<String, String> overrides) throws IOException {
    return runner.run(Files.writeString(folder.resolve("my-plan.groovy"), text), overrides);
  }

  private static PlanException refused(org.junit.jupiter.api.function.Executable work) {
    return assertThrows(PlanException.class, work);
  }

  @Test
  void planId_withoutPlanWord_comesFromTheFileName() throws IOException {
    Path file = Files.writeString(folder.resolve("My Corner_lot2.groovy"), "note 'x'\n");
    assertEquals("my-corner-lot2", runner.run(file, Map.of()).info().id());
  }

  @Test
  void parameters_setFromOutside_areTypedByTheirDefault() throws IOException {
    String script =
        """
        def w = param('width', 4.ft, 'of beds')
        def n = param('rows', 3, 'how many')
        def f = param('share', 0.5, 'of the lot')
        def t = param('title', 'plain', 'on the sheet')
        def b = param('fence', false, 'draw it')
        note "${w + 0.m} ${n + 1} ${f * 2} ${t.size()} ${b ? 'yes' : 'no'}"
        """;
    assertEquals("1.2192 m 4 1 5 no", run(script).parameters().get("note 6"));
    for (String width : List.of("3.5ft", "3.5 ft", "3.5.ft")) {
      Plan plan =
          run(
              script,
              Map.of("width", width, "rows", "7", "share", "1", "title", "ab", "fence", "true"));
      assertEquals("1.0668 m 8 2 2 yes", plan.parameters().get("note 6"));
      assertEquals("1.0668 m", plan.parameters().get("width"));
    }
    assertEquals(
        ProblemCode.WRONG_TYPE,
        refused(() -> run(script, Map.of("width", "3 gal"))).problems().get(0).code());
    assertEquals(
        ProblemCode.UNKNOWN_WORD,
        refused(() -> run(script, Map.of("widht", "3 ft"))).problems().get(0).code());
  }

  @Test
  void include_withNamedValues_drawsTheOtherFileInTheSamePlan() throws IOException {
    Files.createDirectories(folder.resolve("parts"));
    Files.writeString(
        folder.resolve("parts/round.groovy"),
        """
        def at = param('at', point(0.m, 0.m), 'corner')
        def size = param('size', 1.m, 'of the square')
        def name = param('name', 'round', 'of the bed')
        bed name, rect(at.x, at.y, size, size), use: 'perennial'
        include 'leaf', n: 2
        """);
    Files.writeString(
        folder.resolve("parts/leaf.groovy"), "def n = param('n', 1, 'count')\nnote \"leaf $n\"\n");
    Plan plan =
        run(
            """
            include 'parts/round', at: point(3.m, 4.m), size: 2.m, name: 'a'
            include 'parts/round.groovy', name: 'b'
            """);
    assertEquals(2, plan.elements().size());
    assertEquals(4, plan.elements().get(0).shape().area().squareMetres(), 1e-9);
    assertEquals("leaf 2", plan.parameters().get("note 2"));
    PlanException e = refused(() -> run("include 'parts/round', sise: 2.m\n"));
    assertEquals(1, e.problems().get(0).place().line());
    assertTrue(e.getMessage().contains("Did you mean `size`?"), e.getMessage());
    PlanException wrong = refused(() -> run("include 'parts/round', size: 2.gpm\n"));
    assertEquals(ProblemCode.WRONG_TYPE, wrong.problems().get(0).code());
  }

  @Test
  void include_withMistakesInside_namesTheIncludedFile() throws IOException {
    Files.writeString(folder.resolve("part.groovy"), "note 'x'\nbedd 'y'\n");
    PlanException e = refused(() -> run("include 'part'\nnotte 'z'\n"));
    assertEquals(
        List.of("my-plan.groovy:2", "part.groovy:2"),
        e.problems().stream()
            .map(p -> Path.of(p.place().file()).getFileName() + ":" + p.place().line())
            .toList());
  }

  @Test
  void faults_whileRunning_nameTheWordThatFailed() throws IOException {
    PlanException e =
        refused(
            () ->
                run(
                    """
                    note 'x'
                    bed('a',
                      rect(0.m, 0.m,
                        0.m, 1.m), use: 'annual')
                    """));
    assertEquals(
        "3:3", e.problems().get(0).place().line() + ":" + e.problems().get(0).place().column());
  }

  @Test
  void missingFile_isAProblem_notAnException() {
    assertEquals(ProblemCode.FILE, runner.check(folder.resolve("none.groovy")).get(0).code());
  }

  @Test
  void statements_inOtherOrder_giveTheSameElements() throws IOException {
    String a = "bed 'a', rect(0.m, 0.m, 1.m, 1.m), use: 'annual'\n";
    String b = "bed 'b', rect(2.m, 0.m, 1.m, 1.m), use: 'annual'\n";
    assertEquals(
        run(a + b).elements().stream().map(e -> e.id()).toList(),
        run(b + a).elements().stream().map(e -> e.id()).toList());
  }

  @Test
  void nestedClosuresAndBlocks_overVariablesAndWords_work() throws IOException {
    Plan plan =
        run(
            """
            def crops = [kale: 1.ft, leek: 6.inch]
            ['n', 's'].eachWithIndex { side, i ->
              (1..2).each { k ->
                bed "$side$k", rect(i * 5.m, k * 2.m, 4.m, 1.m), use: 'annual', rows: k, {
                  crops.each { crop, gap -> plant "$crop $k", spacing: gap }
                }
              }
            }
            def wide = crops.findAll { c, gap -> gap > 8.inch }
            note "${wide.size()} ${crops.keys()} ${(1..5).findAll { it > 3 }} ${(1..3).any { it == 2 }}"
            int sum = 0
            for (int i = 0; i < 4; i++) { if (i == 2) { continue }; sum += i }
            note "$sum ${-sum} ${2 * 3.m - 1.m} ${3.m / 1.5.m} ${10.m / 4}"
            """);
    assertEquals(4, plan.elements().size());
    assertEquals("0.1524 m", plan.parameters().get("plant leek 2 in s2"));
    assertEquals("1 [kale, leek] [4, 5] true", plan.parameters().get("note 10"));
    assertEquals("4 -4 5 m 2 2.5 m", plan.parameters().get("note 13"));
  }
}
