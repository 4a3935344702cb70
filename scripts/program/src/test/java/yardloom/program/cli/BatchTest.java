package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One plan over many lots. */
class BatchTest {
  private static final String YARD =
      """
      plan 'Street', units: 'us'
      def width = param('width', 40.ft, 'width of the lot')
      lot([point(0.ft, 0.ft), point(width, 0.ft), point(width, 50.ft), point(0.ft, 50.ft)])
      bed 'kitchen bed', rect(10.ft, 10.ft, 20.ft, 4.ft), use: 'annual'
      """;
  private static final String LOTS =
      "lot,width\nOak 1,40ft\nOak 2,a lot\nOak 3,60ft\nOak 4,\nOak 5,35ft\n";

  @TempDir private static Path shared;
  private static Whole whole;

  @TempDir private Path dir;

  /** What all lots in one go come to. */
  private record Whole(List<String> summary, Map<String, String> folders) {}

  @BeforeEach
  void street() throws IOException {
    street(dir);
  }

  private static void street(Path folder) throws IOException {
    Files.writeString(folder.resolve("street.groovy"), YARD);
    Files.writeString(folder.resolve("lots.csv"), LOTS);
  }

  /** Drawn once for the tests that hold something against it. */
  private static Whole whole() throws IOException {
    if (whole == null) {
      street(shared);
      batchIn(shared, "--out", "whole");
      whole = new Whole(lines(shared, "whole/summary.csv"), folders(shared, "whole"));
    }
    return whole;
  }

  private Run batch(String... more) {
    return batchIn(dir, more);
  }

  private static Run batchIn(Path folder, String... more) {
    return Run.in(
        folder,
        Stream.concat(
                Stream.of("batch", "street.groovy", "lots.csv", "--as", "csv,json"),
                Stream.of(more))
            .toArray(String[]::new));
  }

  private List<String> summary(String file) throws IOException {
    return lines(dir, file);
  }

  /** The lines of a summary, which names the script with the folder that it lies in. */
  private static List<String> lines(Path dir, String file) throws IOException {
    return Files.readAllLines(dir.resolve(file)).stream()
        .map(line -> line.replace(dir + "/", ""))
        .toList();
  }

  @Test
  void badRow_isTold_andTheOthersAreDrawn() throws IOException {
    Run run = batch("--out", "out");
    assertEquals(ExitCode.FINDINGS, run.code(), run.err());
    List<String> rows = summary("out/summary.csv");
    assertEquals(6, rows.size());
    // 40 × 50 and 60 × 50 sq ft.
    assertTrue(rows.get(1).startsWith("oak-1,drawn,0,0,\"2,000.00\u00a0sq ft\","), rows.get(1));
    assertTrue(rows.get(2).startsWith("oak-2,failed,0,0,,,,"), rows.get(2));
    assertTrue(rows.get(2).contains("street.groovy:2:13"), rows.get(2));
    assertTrue(rows.get(3).startsWith("oak-3,drawn,0,0,\"3,000.00\u00a0sq ft\","), rows.get(3));
    assertFalse(Files.exists(dir.resolve("out/oak-2")));
    // Plain lines in a pipe, one for each lot and one for the whole.
    List<String> lines = run.out().lines().toList();
    assertEquals(6, lines.size(), run.out());
    assertTrue(lines.stream().anyMatch(l -> l.matches("[1-5]/5 oak-2: failed: .*a lot.*")));
    assertEquals("4 of 5 lots are drawn without errors; out/summary.csv", lines.get(5));
    assertFalse(run.out().contains("\r"));
  }

  @Test
  void lots_areByteEqualToSingleDraws() {
    batch("--out", "out", "--as", "svg,csv,json", "--jobs", "2");
    Map<String, String> widths = Map.of("oak-1", "40ft", "oak-3", "60ft", "oak-5", "35ft");
    widths.forEach(
        (lot, width) -> {
          Run.in(dir, "draw", "street.groovy", "--set", "width=" + width, "--out", "single");
          Map<String, String> drawn = Run.files(dir.resolve("single/street"));
          assertTrue(drawn.size() > 10);
          assertEquals(drawn, Run.files(dir.resolve("out/" + lot)), lot);
        });
  }

  @Test
  void parts_addUpToTheWhole() throws IOException {
    List<String> rows = new ArrayList<>();
    for (String part : List.of("1/3", "2/3", "3/3")) {
      batch("--out", "parts", "--part", part);
      rows.addAll(summary("parts/summary-" + part.replace("/", "-of-") + ".csv"));
    }
    assertEquals(new TreeSet<>(whole().summary()), new TreeSet<>(rows));
    assertEquals(whole().folders(), folders(dir, "parts"));
    assertEquals(ExitCode.USE, batch("--part", "4/3").code());
  }

  /** What the lots' folders hold, without summaries and hidden files. */
  private static Map<String, String> folders(Path dir, String out) {
    Map<String, String> files = new TreeMap<>(Run.files(dir.resolve(out)));
    files.keySet().removeIf(f -> f.startsWith("summary") || f.startsWith("."));
    // A process of its own names the script as it was typed.
    files.replaceAll((name, text) -> text.replace(dir + "/", ""));
    return files;
  }

  @Test
  void secondRun_drawsOnlyWhatIsOpenOrChanged() throws IOException {
    batch("--out", "out");
    // What failed is tried again.
    assertEquals(2, batch("--out", "out").out().lines().count());
    Files.writeString(dir.resolve("lots.csv"), LOTS.replace("Oak 3,60ft", "Oak 3,55ft"));
    Run changed = batch("--out", "out");
    assertEquals(3, changed.out().lines().count(), changed.out());
    assertTrue(summary("out/summary.csv").get(3).contains("2,750.00"), "55 × 50 sq ft");
    Files.writeString(dir.resolve("street.groovy"), YARD.replace("4.ft), use", "5.ft), use"));
    assertEquals(6, batch("--out", "out").out().lines().count());
    assertEquals(6, batch("--out", "out", "--again").out().lines().count());
    // What was drawn again is done; the one that failed is tried once more.
    assertEquals(2, batch("--out", "out").out().lines().count());
  }

  /** The JVM's path of classes in this build; surefire keeps it apart. */
  private static String classPath() {
    return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void killedAndStartedAgain_endsAsIfNothingHadHappened(boolean force) throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                classPath(),
                "yardloom.program.cli.Main",
                "batch",
                "street.groovy",
                "lots.csv",
                "--as",
                "csv,json",
                "--out",
                "out",
                "--jobs",
                "1")
            .directory(dir.toFile())
            .redirectErrorStream(true)
            .start();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      String first = lines.readLine();
      assertTrue(first != null && first.startsWith("1/5 oak-1"), first);
      if (force) {
        process.destroyForcibly();
      } else {
        process.destroy();
      }
      assertTrue(process.waitFor(1, TimeUnit.MINUTES));
    }
    assertFalse(Files.exists(dir.resolve("out/summary.csv")), "it was not killed in time");
    if (!force) {
      try (Stream<Path> left = Files.list(dir.resolve("out"))) {
        assertEquals(
            List.of(),
            left.map(f -> f.getFileName().toString())
                .filter(f -> f.startsWith(".") && !f.equals(".batch"))
                .toList(),
            "half a folder is left");
      }
    }
    Run again = batch("--out", "out");
    assertTrue(again.out().lines().count() < 6, "the first lot is drawn again");
    assertEquals(whole().summary(), summary("out/summary.csv"));
    assertEquals(whole().folders(), folders(dir, "out"));
  }

  /**
   * A degree at latitude 40° is 111.035 km north and 85.394 km east (WGS 84, published table of the
   * length of a degree, from memory): 0.0003° × 0.0004° are 25.618 × 44.414 m, 1,137.8 m².
   */
  @Test
  void polygonsOfAGeoJson_becomeTheLots() throws IOException {
    Files.writeString(
        dir.resolve("map.groovy"),
        """
        plan 'Map', units: 'metric'
        def outline = param('lot', '{"type": "Polygon", "coordinates": [[[-88, 40], [-87.999, 40], [-87.999, 40.001], [-88, 40]]]}', 'outline')
        def latitude = param('latitude', 0.deg, 'latitude')
        lotOutline(geoOutline(outline))
        site 'map', latitude: latitude, longitude: -88.deg, zone: 'America/Chicago'
        bed 'bed', rect(10.m, 10.m, 6.m, 1.m), use: 'annual'
        """);
    String polygon =
        "{\"type\": \"Feature\", \"properties\": {\"name\": \"%s\"}, \"geometry\": {\"type\":"
            + " \"Polygon\", \"coordinates\": [[[-88, 40], [%s, 40], [%s, 40.0004], [-88, 40.0004],"
            + " [-88, 40]]]}}";
    Files.writeString(
        dir.resolve("lots.geojson"),
        "{\"type\": \"FeatureCollection\", \"features\": ["
            + polygon.formatted("Elm 1", "-87.9997", "-87.9997")
            + ", "
            + polygon.formatted("Elm 2", "-87.9994", "-87.9994")
            + ", {\"type\": \"Feature\", \"properties\": null, \"geometry\": null}]}");
    Run run = Run.in(dir, "batch", "map.groovy", "lots.geojson", "--out", "out", "--as", "json");
    assertEquals(ExitCode.FINDINGS, run.code(), run.err());
    List<String> rows = summary("out/summary.csv");
    double first = areaM2(rows.get(1));
    assertEquals(1137.8, first, 2);
    assertEquals(2 * first, areaM2(rows.get(2)), 0.5);
    assertTrue(rows.get(3).startsWith("lot-3,failed,"), rows.get(3));
    String json = Files.readString(dir.resolve("out/elm-1/results.json"));
    assertTrue(json.contains("\"latitudeDeg\" : 40.0002"), json.substring(0, 800));
  }

  private static double areaM2(String row) {
    assertTrue(row.contains(",drawn,") || row.contains(",findings,"), row);
    String shown = row.split(",", 5)[4].split("\u00a0m²")[0];
    return Double.parseDouble(shown.replace("\u00a0", "").replace("\"", ""));
  }

  @Test
  void planThatIsWrongItself_isToldOnce() throws IOException {
    Files.writeString(dir.resolve("street.groovy"), YARD + "bedd 'x'\n");
    Run run = batch("--out", "out");
    assertEquals(ExitCode.PLAN, run.code());
    assertEquals(1, run.err().lines().filter(l -> l.contains("`bedd`")).count(), run.err());
    assertFalse(Files.exists(dir.resolve("out")));
    assertEquals(ExitCode.PLAN, Run.in(dir, "batch", "street.groovy", "none.csv").code());
  }

  @Test
  void help_hasAnExample() {
    assertTrue(Run.in(dir, "batch", "--help").out().contains("--part 1/3"));
  }
}
