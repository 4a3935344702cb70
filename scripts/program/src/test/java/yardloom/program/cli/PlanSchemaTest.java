package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.kernel.vocab.Lexicon;
import yardloom.language.form.FormReader;
import yardloom.language.form.FormSchema;

/** The schema of plans as JSON, against a validator that knows nothing of the reader. */
class PlanSchemaTest {
  @TempDir Path folder;

  private static final ObjectMapper JSON = new ObjectMapper();
  private static Lexicon lexicon;
  private static String text;
  private static Schema schema;

  @BeforeAll
  static void made() {
    lexicon = Toolkit.load().plugins().lexicon();
    text = FormSchema.of(lexicon);
    schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text);
  }

  @Test
  void words_asSchema_printIt() {
    assertEquals(text, Run.in(folder, "words", "--as", "schema").out());
  }

  static List<String> plans() {
    return ConvertTest.plans().toList();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void plan_writtenFromEachScript_fitsTheSchema(String script) throws Exception {
    Run run = Run.in(folder, "convert", script, "--out", "p.plan.json", "--places");
    assertEquals(0, run.code(), run.err());
    String form = Files.readString(folder.resolve("p.plan.json"));
    assertEquals(List.of(), schema.validate(form, InputFormat.JSON));
  }

  /** What a helper draws has the line of its caller in its place. */
  @Test
  void plan_writtenFromAScriptWithAHelper_fitsTheSchema() throws Exception {
    Files.writeString(
        folder.resolve("helped.groovy"),
        """
        lot([point(0.ft, 0.ft), point(40.ft, 0.ft), point(40.ft, 30.ft), point(0.ft, 30.ft)])
        void strip(String name, Length x) {
          bed name, rect(x, 5.ft, 4.ft, 20.ft), use: 'annual'
        }
        strip 'west', 6.ft
        """);
    Run run = Run.in(folder, "convert", "helped.groovy", "--places");
    assertEquals(0, run.code(), run.err());
    String form = Files.readString(folder.resolve("helped.plan.json"));
    assertTrue(form.contains("\"helped.groovy:3:3 from 5\""), form);
    assertEquals(List.of(), schema.validate(form, InputFormat.JSON));
  }

  private static final String PLAN =
      """
      {"form": "yardloom-plan-1", "plan": [
        {"word": "plan", "with": {"title": "Small", "units": "us"}},
        {"word": "param", "with": {"name": "deep", "value": "4 inch", "help": "depth"}},
        {"word": "publication", "as": "page", "with": {"title": "A page", "by": "county",
          "year": 2020, "seen": "read"}},
        {"word": "include", "with": {"file": "regional/flats.groovy"}, "block": [
          {"word": "localSoil", "with": {"name": "Silt loam", "sand": 5.5, "clay": 26, "organic": 4,
            "source": {"ref": "page"}}}]},
        {"word": "lot", "as": "lot 1", "with": {"corners": [["0 ft", "0 ft"], ["40 ft", "0 ft"],
          ["40 ft", "60 ft"], ["0 ft", "60 ft"]]},
          "block": [{"word": "side", "with": {"name": "south", "role": "front"}}]},
        {"word": "tap", "with": {"name": "tap", "at": ["3 m", "4.5 m"]}},
        {"word": "path", "with": {"name": "walk", "width": "3 ft",
          "line": [["2 ft", "2 ft"], ["2 ft", "50 ft"]]}},
        {"word": "bed", "with": {"name": "long", "use": "annual",
          "shape": {"word": "circle", "with": {"centre": ["20 ft", "30 ft"], "radius": "6 ft"}}},
          "block": [{"word": "compost", "with": {"depth": {"param": "deep"}}},
            {"word": "frame", "with": {"size": "2x10", "alsoStock": ["8 ft", {"ref": "page"}]}},
            {"word": "plant", "with": {"name": "tomato", "spacing": "2 ft"}}]},
        {"word": "bed", "with": {"name": "cut", "use": "perennial",
          "shape": {"ground": [[[[0, 0], [1, 0], [1, 1.5]]]]}}},
        {"word": "item", "with": {"name": "cistern", "count": 1, "phase": "head", "source": {"ref": "page"}}},
        {"word": "sheets", "with": {"names": ["cover"]}}
      ]}
      """;

  private static List<String> problems(String plan) {
    return FormReader.read(plan, "p", lexicon, (scope, word) -> Optional.empty())
        .problems()
        .stream()
        .map(Object::toString)
        .toList();
  }

  /**
   * Every value of a plan is replaced, renamed, left out and doubled in turn: the schema and the
   * reader must say the same of each. What only the reader can know is told apart by its message.
   */
  @Test
  void schema_andReader_refuseTheSameBrokenPlans() throws Exception {
    assertEquals(List.of(), problems(PLAN));
    JsonNode plan = JSON.readTree(PLAN);
    List<String> differ = new ArrayList<>();
    int[] refused = {0};
    int[] fine = {0};
    for (JsonNode broken : mutants(plan)) {
      boolean fits = schema.validate(broken.toString(), InputFormat.JSON).isEmpty();
      List<String> said = problems(broken.toString());
      List<String> known = said.stream().filter(s -> !onlyReader(s)).toList();
      (fits ? fine : refused)[0]++;
      if (fits != known.isEmpty() && !(!fits && !said.isEmpty())) {
        differ.add((fits ? "schema takes " : "schema refuses ") + broken + " reader: " + said);
      }
    }
    assertEquals(List.of(), differ.stream().limit(5).toList(), differ.size() + " differ");
    assertTrue(refused[0] > 400 && fine[0] > 20, refused[0] + " refused, " + fine[0] + " fine");
  }

  /** What a schema cannot say: order of names, what a parameter holds, what a shape needs. */
  private static boolean onlyReader(String problem) {
    return problem.contains("no earlier step")
        || problem.contains("is already")
        || problem.contains("the parameter `deep` holds")
        || problem.contains("BAD_SHAPE")
        || problem.contains("OUT_OF_RANGE");
  }

  private static List<JsonNode> mutants(JsonNode plan) throws Exception {
    List<JsonNode> made = new ArrayList<>();
    int count = paths(plan).size();
    List<String> values = List.of("7", "\"x\"", "\"4 ft\"", "true", "null", "[]", "{}", "2.5");
    for (int i = 1; i < count; i++) {
      for (String value : values) {
        JsonNode replaced = JSON.readTree(value);
        made.add(changed(plan, i, at -> at.set(replaced)));
      }
      made.add(changed(plan, i, Where::remove));
      made.add(changed(plan, i, Where::rename));
    }
    made.removeIf(java.util.Objects::isNull);
    return made;
  }

  private static JsonNode changed(JsonNode plan, int at, Consumer<Where> change) {
    JsonNode copy = plan.deepCopy();
    change.accept(paths(copy).get(at));
    return copy;
  }

  private static List<Where> paths(JsonNode root) {
    List<Where> all = new ArrayList<>();
    all.add(new Where(null, null, 0));
    collect(root, all);
    return all;
  }

  private static void collect(JsonNode node, List<Where> all) {
    if (node instanceof ObjectNode object) {
      object
          .fieldNames()
          .forEachRemaining(
              name -> {
                all.add(new Where(object, name, 0));
                collect(object.get(name), all);
              });
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        all.add(new Where(list, null, i));
        collect(list.get(i), all);
      }
    }
  }

  private record Where(JsonNode in, String name, int index) {
    void set(JsonNode value) {
      if (in instanceof ObjectNode object) {
        object.set(name, value);
      } else {
        ((ArrayNode) in).set(index, value);
      }
    }

    void remove() {
      if (in instanceof ObjectNode object) {
        object.remove(name);
      } else {
        ((ArrayNode) in).remove(index);
      }
    }

    void rename() {
      if (in instanceof ObjectNode object) {
        object.set(name + "s", object.remove(name));
      }
    }
  }
}
