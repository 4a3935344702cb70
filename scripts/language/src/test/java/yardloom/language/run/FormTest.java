package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.language.form.FormWriter;
import yardloom.language.limit.RunLimits;

class FormTest {
  @TempDir Path folder;

  private final PlanRunner runner =
      new PlanRunner(
          TestWords.lexicon(),
          RunLimits.standard(),
          (scope, word) -> word.equals("mulch") ? Optional.of("materials") : Optional.empty());

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private String written(String script, Map<String, String> settings) throws IOException {
    return FormWriter.write(runner.record(file("yard.groovy", script), settings));
  }

  private static String form(String... steps) {
    return "{\n  \"form\": \"yardloom-plan-1\",\n  \"plan\": [\n    "
        + String.join(",\n    ", steps)
        + "\n  ]\n}\n";
  }

  @Test
  void script_withLoopsHelpersAndArithmetic_isWrittenAsTheWordsItSpoke() throws IOException {
    String script =
        """
        def w = param('width', 4.ft, 'width of beds')
        Shape strip(Length at) { rect(at, 0.m, 30.inch, 2.5.m) }
        for (i in 1..2) {
          bed "row ${i}", strip(i * w), use: 'annual', depth: 6.inch, rows: i + 0.5, {
            if (i == 2) { plant 'kale', spacing: 1.ft }
          }
        }
        """;
    assertEquals(
        form(
            "{\"word\": \"param\", \"with\": {\"name\": \"width\", \"value\": \"4 ft\","
                + " \"help\": \"width of beds\", \"fixed\": true}}",
            "{\"word\": \"bed\", \"with\": {\"name\": \"row 1\", \"shape\": {\"word\": \"rect\","
                + " \"with\": {\"x\": \"4 ft\", \"y\": \"0 m\", \"width\": \"30 inch\","
                + " \"depth\": \"2.5 m\"}}, \"use\": \"annual\", \"depth\": \"6 inch\","
                + " \"rows\": 1.5}, \"block\": []}",
            "{\"word\": \"bed\", \"with\": {\"name\": \"row 2\", \"shape\": {\"word\": \"rect\","
                + " \"with\": {\"x\": \"8 ft\", \"y\": \"0 m\", \"width\": \"30 inch\","
                + " \"depth\": \"2.5 m\"}}, \"use\": \"annual\", \"depth\": \"6 inch\","
                + " \"rows\": 2.5}, \"block\": [\n"
                + "      {\"word\": \"plant\", \"with\": {\"crop\": \"kale\","
                + " \"spacing\": \"1 ft\"}}\n    ]}"),
        written(script, Map.of()));
  }

  @Test
  void setting_givenToTheScript_isWorkedIn() throws IOException {
    String form = written("def w = param('w', 4.ft, 'width')\nnote w * 2\n", Map.of("w", "3 m"));
    assertEquals(
        form(
            "{\"word\": \"param\", \"with\": {\"name\": \"w\", \"value\": \"3 m\", \"help\":"
                + " \"width\", \"fixed\": true}}",
            "{\"word\": \"note\", \"with\": {\"text\": \"6 m\"}}"),
        form);
    PlanException refused =
        assertThrows(
            PlanException.class,
            () -> runner.run(file("yard.plan.json", form), Map.of("w", "5 m")));
    assertEquals(
        "the parameter `w` is fixed: the plan was written with its value worked in; set it where"
            + " the plan is converted",
        refused.problems().get(0).message());
  }

  @Test
  void text_thatLooksLikeALength_staysAText() throws IOException {
    String form = written("note '4 ft'\nnote 4.ft\nnote(['4 m', 4.m, 'x'])\n", Map.of());
    Plan plan = runner.run(file("yard.plan.json", form), Map.of());
    // 4 ft is 1.2192 m.
    assertEquals(
        Map.of("note 4", "4 ft", "note 5", "1.2192 m", "note 6", "[4 m, 4 m, x]"),
        plan.parameters());
    assertEquals(form, FormWriter.write(runner.record(folder.resolve("yard.plan.json"), Map.of())));
  }

  @Test
  void form_writtenByHand_givesElementsAndPlaces() throws IOException {
    String form =
        form(
            "{\"word\": \"param\", \"with\": {\"name\": \"deep\", \"value\": \"7 inch\","
                + " \"help\": \"depth\"}}",
            "{\"word\": \"bed\", \"as\": \"first\", \"with\": {\"name\": \"a\", \"shape\":"
                + " {\"ground\": [[[[0, 0], [0, 3], [2, 3], [2, 0]],"
                + " [[0.5, 1], [1, 1], [1, 2], [0.5, 2]]]]}, \"use\": \"annual\","
                + " \"depth\": {\"param\": \"deep\"}}}",
            "{\"word\": \"bed\", \"with\": {\"name\": \"b\", \"shape\": {\"ref\": \"first\"},"
                + " \"use\": \"perennial\"}}");
    Plan plan = runner.run(file("yard.plan.json", form), Map.of("deep", "8 inch"));
    // 2 m × 3 m less 0.5 m × 1 m.
    assertEquals(5.5, ((Element.Bed) plan.elements().get(0)).shape().area().squareMetres(), 1e-12);
    assertEquals(5.5, ((Element.Bed) plan.elements().get(1)).shape().area().squareMetres(), 1e-12);
    assertEquals(
        folder.resolve("yard.plan.json") + ":5:5", plan.elements().get(0).place().toString());
    assertEquals("yard", plan.info().id());
    // 8 in is 0.2032 m, and 8 × 0.0254 in binary.
    assertEquals("annual 0.20320000000000002 m null 5", plan.parameters().get("bed a"));
  }

  @Test
  void places_kept_areThoseOfTheScriptAndItsIncludes() throws IOException {
    Files.createDirectories(folder.resolve("parts"));
    file("parts/part.groovy", "\n  note 'inner'\n");
    Path script = file("yard.groovy", "include 'parts/part'\nnote 'outer'\n");
    String form = FormWriter.write(runner.record(script, Map.of()), folder);
    assertEquals(
        form(
            "{\"word\": \"include\", \"with\": {\"file\": \"parts/part.groovy\"}, \"place\":"
                + " \"yard.groovy:1:1\", \"block\": [\n      {\"word\": \"note\", \"with\":"
                + " {\"text\": \"inner\"}, \"place\": \"parts/part.groovy:2:3\"}\n    ]}",
            "{\"word\": \"note\", \"with\": {\"text\": \"outer\"}, \"place\":"
                + " \"yard.groovy:2:1\"}"),
        form);
    Plan plan = runner.run(file("yard.plan.json", form), Map.of());
    assertEquals(Map.of("note 2", "outer"), Map.of("note 2", plan.parameters().get("note 2")));
  }

  @Test
  void message_ofEachMistake_namesPlaceWhatAndWhatIsAllowed() throws IOException {
    Path plan =
        file(
            "yard.plan.json",
            form(
                "{\"word\": \"bedd\"}",
                "{\"word\": \"mulch\"}",
                "{\"word\": \"bed\", \"with\": {\"name\": \"a\", \"usee\": \"annual\", \"shape\":"
                    + " {\"word\": \"rect\", \"with\": {\"x\": 4, \"y\": \"0 lb\", \"width\":"
                    + " \"1 m\"}}, \"depth\": true}}"));
    List<String> told =
        runner.check(plan).stream()
            .map(Problem::toString)
            .map(t -> t.replace(plan.toString(), "yard.plan.json"))
            .toList();
    assertEquals(
        List.of(
            "yard.plan.json:4:14: there is no word `bedd` in plan. Did you mean `bed`? `yardloom"
                + " words` lists them [UNKNOWN_WORD]",
            "yard.plan.json:5:14: `mulch` comes with the plugin materials, which is not loaded"
                + " [MISSING_PLUGIN]",
            "yard.plan.json:6:29: `bed`: missing `use` (what grows) [MISSING_OPTION]",
            "yard.plan.json:6:43: `bed` has no option `usee`. Did you mean `use`? It has: name,"
                + " shape, use, depth, rows [UNKNOWN_WORD]",
            "yard.plan.json:6:95: `rect`: missing `depth` (upwards) [MISSING_OPTION]",
            "yard.plan.json:6:101: `rect`: x needs a length, such as \"4 ft\"; got the bare number"
                + " 4, which has no unit [WRONG_TYPE]",
            "yard.plan.json:6:109: `rect`: y needs a length, such as \"4 ft\"; got the text '0 lb'"
                + " [WRONG_TYPE]",
            "yard.plan.json:6:144: `bed`: depth needs a length, such as \"4 ft\"; got true"
                + " [WRONG_TYPE]"),
        told);
  }

  /** What a machine wrote wrongly it wrote wrongly often; the first fifty tell enough. */
  @Test
  void messages_endWithTheFiftieth() throws IOException {
    String[] steps = new String[64];
    Arrays.fill(steps, "{\"word\": \"nothing\"}");
    List<Problem> told = runner.check(file("yard.plan.json", form(steps)));
    assertEquals(50, told.size());
    // The first step stands on line 4.
    assertEquals(53, told.get(49).place().line());
  }
}
