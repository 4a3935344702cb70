package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.program.output.ResultsJson;

class ResultsJsonTest {
  @TempDir private Path dir;

  private static String demo() {
    return Samples.drawn("urbana-yard").get("results.json");
  }

  private static Schema schema() throws Exception {
    try (var in = ResultsJson.class.getResourceAsStream("results.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8));
    }
  }

  @Test
  void results_ofTheDemo_fitThePublishedSchema() throws Exception {
    assertEquals(List.of(), schema().validate(demo(), InputFormat.JSON));
  }

  @Test
  void schema_anotherVersion_isRefused() throws Exception {
    assertFalse(
        schema()
            .validate(demo().replace("\"version\" : 1", "\"version\" : 2"), InputFormat.JSON)
            .isEmpty());
  }

  @Test
  void lot_of60By120Feet_is7200SquareFeet() throws Exception {
    Files.writeString(
        dir.resolve("lot.groovy"),
        "lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 120.ft), point(0.ft, 120.ft)])\n");
    assertEquals(ExitCode.FINE, Run.in(dir, "draw", "lot.groovy", "--as", "json").code());
    JsonNode results =
        new ObjectMapper().readTree(Files.readString(dir.resolve("yardloom-out/lot/results.json")));
    // 60 ft × 120 ft × 0.09290304 m², the square foot of NIST SP 811.
    assertEquals(7200 * 0.09290304, results.path("plan").path("lotAreaM2").asDouble(), 1e-9);
  }
}
