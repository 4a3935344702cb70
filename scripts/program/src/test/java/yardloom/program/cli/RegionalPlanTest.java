package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The shipped regional file through the command line. */
class RegionalPlanTest {
  private static final Path SAMPLES = Samples.FOLDER;
  private static final String REGION = "regional/tallgrass-flats.groovy";

  @TempDir private Path dir;

  private Path copy(String script) throws IOException {
    Files.createDirectories(dir.resolve("regional"));
    Files.copy(SAMPLES.resolve(REGION), dir.resolve(REGION));
    return Files.writeString(dir.resolve("regional-demo.groovy"), script);
  }

  private static String demo() throws IOException {
    return Files.readString(SAMPLES.resolve("regional-demo.groovy"));
  }

  private Map<String, String> draw(Path script) {
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/regional-demo"));
  }

  @Test
  void demo_drawn_printsRegionSoilCodesAndItsOwnCheck() throws IOException {
    assertTrue(demo().lines().count() <= 40);
    Map<String, String> files = Samples.drawn("regional-demo");
    String soil = files.get("tables/materials-soil.csv");
    assertTrue(soil.contains("silty clay loam"), soil);
    // The intake is the low end of the series' conductivity.
    assertTrue(soil.contains(",0.60,"), soil);
    String rules = files.get("tables/materials-local-rules.csv");
    assertTrue(rules.contains("3 to 10 working days before"), rules);
    assertTrue(rules.contains("the house is on the sewer"), rules);
    assertFalse(rules.contains("77 Ill. Adm. Code 905"), "the plan's own rule goes first");
    assertTrue(files.get("tables/materials-region.csv").contains("Tallgrass Flats"));
    assertTrue(
        files.entrySet().stream()
            .anyMatch(f -> f.getKey().endsWith(".svg") && f.getValue().contains("Tallgrass")),
        "no sheet names the region");
    String findings = files.get("findings.txt");
    // The basin's edge lies at 57 ft, the house ends at 51 ft.
    assertTrue(findings.contains("region.basins-off-walls"), findings);
    assertTrue(findings.contains("6 ft from building \"house\"; the limit is 10 ft"), findings);
    assertFalse(findings.contains("region.basins-on-slow-soil"), findings);
  }

  /** Clay, sand and intake of the region's soils lie within the official series descriptions. */
  @ParameterizedTest
  @CsvFileSource(resources = "/yardloom/program/regional/series.csv", numLinesToSkip = 1)
  void soils_lieWithinTheirSeries(
      String soil,
      double clayLow,
      double clayHigh,
      double sandLow,
      double sandHigh,
      double ksatLow,
      double ksatHigh)
      throws IOException {
    Matcher said =
        Pattern.compile(
                "localSoil '"
                    + soil
                    + "', sand: ([\\d.]+), clay: ([\\d.]+), organic: [\\d.]+, intake:"
                    + " ([\\d.]+)\\.inch,")
            .matcher(Files.readString(SAMPLES.resolve(REGION)));
    assertTrue(said.find(), soil);
    double sand = Double.parseDouble(said.group(1));
    double clay = Double.parseDouble(said.group(2));
    // 1 in an hour is 25,400 µm in 3,600 s.
    double ksat = Double.parseDouble(said.group(3)) * 25_400 / 3_600;
    assertTrue(clay >= clayLow && clay <= clayHigh, "clay " + clay);
    assertTrue(sand >= sandLow && sand <= sandHigh, "sand " + sand);
    assertTrue(ksat >= ksatLow - 0.005 && ksat <= ksatHigh, "conductivity " + ksat);
  }

  @Test
  void slowSoilOfTheRegion_isFoundWithValueAndLimit() throws IOException {
    Path script = copy(demo().replace("Drummer silty clay loam", "Bryce silty clay"));
    String findings = draw(script).get("findings.txt");
    assertTrue(findings.contains("region.basins-on-slow-soil"), findings);
    assertTrue(findings.contains("0.06 in an hour"), findings);
    assertTrue(findings.contains("at least 0.25 in"), findings);
  }

  @Test
  void soilMisspelt_isRefusedWithPlaceAndTheNearest() throws IOException {
    Path script = copy(demo().replace("soilNamed 'Drummer", "soilNamed 'Drumer"));
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("regional-demo.groovy:6"), run.err());
    assertTrue(run.err().contains("Did you mean `Drummer silty clay loam`?"), run.err());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  @Test
  void rowWithoutSource_isRefusedWithFileAndLineOfTheRegionalFile() throws IOException {
    Path script = copy(demo());
    Path region = dir.resolve(REGION);
    Files.writeString(
        region, Files.readString(region) + "localSoil 'x', sand: 40, clay: 20, organic: 3\n");
    long line = Files.readString(region).lines().count();
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out");
    assertEquals(ExitCode.PLAN, run.code());
    assertTrue(run.err().contains("tallgrass-flats.groovy:" + line), run.err());
    assertTrue(run.err().contains("`source`"), run.err());
    assertFalse(Files.exists(dir.resolve("out")));
  }

  /** Soil check P19, one county's table: local data in a file of its own, with its source. */
  @Test
  void isolationDistances_inACountysFile_holdForThePlanThatIncludesIt() throws IOException {
    String yard =
        """
        plan 'Yard', client: 'demo household', author: 'demo', date: '2026-03-01', units: 'us'
        include 'county'
        lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 160.ft), point(0.ft, 160.ft)])
        building 'house, full basement', rect(20.ft, 50.ft, 30.ft, 30.ft), eaves: 10.ft
        keepOut 'septic tank', rect(70.ft, 90.ft, 8.ft, 5.ft), reason: 'septic tank'
        tap 'well', point(30.ft, 120.ft), source: 'well'
        """;
    Files.writeString(
        dir.resolve("county.groovy"),
        """
        def table = publication('Isolation distances', by: 'Washtenaw County, Michigan', seen: 'read')
        localCheck 'tank off the line', kind: 'keep out', named: 'septic tank', nearer: 10.ft, to: 'lot line',
          say: 'The tank is too near the line.', advice: 'Move it.', source: table
        localCheck 'well off the tank', kind: 'water point', named: 'well', nearer: 50.ft, to: 'keep out', toNamed: 'septic tank',
          say: 'The well is too near the tank.', advice: 'Move it.', source: table
        localCheck 'well off basements', kind: 'water point', named: 'well', nearer: 3.ft, to: 'building', toNamed: 'basement',
          say: 'The well is too near a basement.', advice: 'Move it.', source: table
        """);
    Path script = Files.writeString(dir.resolve("yard.groovy"), yard);
    String found = Run.in(dir, "check", script.toString()).out();
    // The tank ends 12 ft from the eastern line; the well stands hypot(40, 25) ft from the tank.
    assertFalse(found.contains("region.tank-off-the-line"), found);
    assertFalse(found.contains("region.well-off-basements"), found);
    assertTrue(found.contains("region.well-off-the-tank"), found);
    assertTrue(found.contains("lies 47.2 ft from keep out \"septic tank\""), found);
    assertTrue(found.contains("Verify locally."), found);
    assertTrue(found.contains("Isolation distances, Washtenaw County, Michigan"), found);

    Files.writeString(script, yard.replace("include 'county'\n", ""));
    assertFalse(Run.in(dir, "check", script.toString()).out().contains("region."), "no file");
  }
}
