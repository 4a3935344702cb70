package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures at chosen dots per inch, and layers for maps, from a plan's script. */
class DrawnFilesTest {
  private static final String PLAN =
      """
      plan 'Files', units: 'us'
      site 'On the equator', latitude: 0.deg, longitude: 30.deg, zone: 'UTC'
      lot([point(0.ft, 0.ft), point(30.ft, 0.ft), point(30.ft, 50.ft), point(0.ft, 50.ft)])
      path 'walk', line([point(3.ft, 2.ft), point(3.ft, 40.ft)]), width: 3.ft
      bed 'kitchen', rect(10.m, 2.m, 3.m, 5.m), use: 'perennial'
      """;

  @TempDir Path folder;

  private Run draw(String... more) throws IOException {
    Files.writeString(
        folder.resolve("files.groovy"), PLAN.replace("rect(10.m, 2.m", "rect(4.m, 2.m"));
    String[] all = new String[more.length + 2];
    all[0] = "draw";
    all[1] = "files.groovy";
    System.arraycopy(more, 0, all, 2, more.length);
    return Run.in(folder, all);
  }

  /**
   * ARCH A is 12 by 9 in: 1,200 by 900 dots at 100 to the inch, and 100 / 0.0254 = 3,937 dots to a
   * metre stand in the picture's pHYs chunk (PNG specification, section 11.3.4.3).
   */
  @Test
  void png_hundredDotsPerInch_isSoLargeAndSaysSo() throws IOException {
    Run run = draw("--as", "png", "--sheet", "arch-a", "--dpi", "100", "--out", "out");
    assertEquals(0, run.code(), run.err());
    try (var pictures = Files.list(folder.resolve("out/files/sheets"))) {
      Path first =
          pictures
              .filter(p -> p.toString().endsWith(".png"))
              .sorted()
              .filter(p -> p.getFileName().toString().startsWith("01"))
              .findFirst()
              .orElseThrow();
      try (DataInputStream in = new DataInputStream(Files.newInputStream(first))) {
        in.readLong();
        int perMetre = 0;
        while (perMetre == 0) {
          int length = in.readInt();
          String name = new String(in.readNBytes(4), StandardCharsets.US_ASCII);
          byte[] data = in.readNBytes(length);
          in.readInt();
          if (name.equals("IHDR")) {
            assertEquals(1200, Math.max(number(data, 0), number(data, 4)));
            assertEquals(900, Math.min(number(data, 0), number(data, 4)));
          } else if (name.equals("pHYs")) {
            perMetre = number(data, 0);
          }
          assertFalse(name.equals("IEND"), "no pHYs chunk");
        }
        assertEquals(3937, perMetre, 1);
      }
    }
  }

  private static int number(byte[] bytes, int at) {
    return java.nio.ByteBuffer.wrap(bytes).getInt(at);
  }

  @Test
  void png_tooManyDots_isRefusedBeforeAnythingIsWritten() throws IOException {
    Run run = draw("--as", "png", "--dpi", "9000", "--out", "out");
    assertTrue(run.code() != 0);
    assertTrue(run.err().contains("9000 dots per inch"), run.err());
    assertFalse(Files.exists(folder.resolve("out/files")));
  }

  /** No sheet is composed for tables alone, and none is told of. */
  @Test
  void tablesAlone_areToldWithoutSheets_butSheetsThatAreNamedAreLookedFor() throws IOException {
    Run tables = draw("--as", "csv", "--out", "tables");
    assertEquals(0, tables.code(), tables.err());
    assertTrue(
        tables.out().lines().findFirst().orElseThrow().matches(".*: \\d+ tables"), tables.out());
    assertFalse(Files.exists(folder.resolve("tables/files/sheets")));
    assertTrue(Files.exists(folder.resolve("tables/files/tables/beds.csv")));
    Run sheets = draw("--as", "svg", "--out", "sheets");
    assertTrue(
        sheets.out().lines().findFirst().orElseThrow().contains(" sheets at "), sheets.out());
    Run named = draw("--as", "csv", "--sheets", "no-such", "--out", "named");
    assertEquals(ExitCode.PLAN, named.code(), named.out());
    assertTrue(named.err().contains("no-such"), named.err());
  }

  /**
   * On the equator a degree of longitude is 111,319.49 m (6,378,137 m × π / 180, WGS 84) and one of
   * latitude 110,574.3 m: the bed's 3 m by 5 m are 0.00002695 by 0.00004522 degrees.
   */
  @Test
  void geojson_bedLayer_liesWhereThePlanPutsIt() throws IOException {
    Run run = draw("--as", "geojson", "--out", "out");
    assertEquals(0, run.code(), run.err());
    JsonNode beds =
        new ObjectMapper().readTree(folder.resolve("out/files/layers/site-bed.geojson").toFile());
    assertEquals("FeatureCollection", beds.get("type").asText());
    assertEquals("site.bed", beds.get("layer").asText());
    JsonNode bed = beds.at("/features/0");
    assertTrue(bed.at("/properties/name").asText().contains("kitchen"), bed.toString());
    assertEquals("Polygon", bed.at("/geometry/type").asText());
    JsonNode box = beds.get("bbox");
    assertEquals(3 / 111_319.49, box.get(2).asDouble() - box.get(0).asDouble(), 2e-9);
    assertEquals(5 / 110_574.3, box.get(3).asDouble() - box.get(1).asDouble(), 2e-9);
    assertEquals(30 + 4 / 111_319.49, box.get(0).asDouble(), 2e-9);
    assertEquals(2 / 110_574.3, box.get(1).asDouble(), 2e-9);
    assertFalse(Files.exists(folder.resolve("out/files/site.geojson")), "that comes with json");
  }
}
