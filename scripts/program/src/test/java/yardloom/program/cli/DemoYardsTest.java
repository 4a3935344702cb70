package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What each demo yard is there to show. */
class DemoYardsTest {
  private static final Path SAMPLES = Samples.FOLDER;

  @TempDir private Path dir;

  private Map<String, String> draw(Path script, String name) {
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    return Run.files(dir.resolve("out/" + name));
  }

  private static double[] rainMm() throws IOException {
    return Files.readAllLines(SAMPLES.resolve("seattle-rain-2012.csv")).stream()
        .skip(1)
        .mapToDouble(l -> Double.parseDouble(l.split(",")[1]))
        .toArray();
  }

  /**
   * The series against what was published at the time for the gauge at the airport: 48.26 in in
   * 2012, 8.28 in in November, 2.13 in on the 19th, 48 days in a row without measurable rain
   * (seattleweatherblog.com, 2012 Rainfall; kirotv.com, 30 December 2012).
   */
  @Test
  void seattleRain_sumsAndDrySpell_areThePublishedOnes() throws IOException {
    double[] mm = rainMm();
    assertEquals(366, mm.length);
    double year = 0;
    double november = 0;
    int longest = 0;
    int run = 0;
    for (int i = 0; i < mm.length; i++) {
      year += mm[i];
      november += i >= 305 && i < 335 ? mm[i] : 0;
      run = mm[i] > 0 ? 0 : run + 1;
      longest = Math.max(longest, run);
    }
    assertEquals(48.26, year / 25.4, 0.02);
    assertEquals(8.28, november / 25.4, 0.02);
    assertEquals(2.13, mm[305 + 18] / 25.4, 0.005);
    assertEquals(48, longest);
  }

  /** A set that people read: what explains or compares stands in the report. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void set_everyDemo_hasAtMostEightSheetsAndEightPages(String demo) {
    List<String> sheets =
        Samples.drawn(demo).keySet().stream()
            .filter(f -> f.startsWith("sheets/"))
            .sorted()
            .toList();
    List<String> pages =
        sheets.stream()
            .filter(f -> f.matches("sheets/\\d+-(crew|client|care|timetable).*\\.svg"))
            .toList();
    assertTrue(pages.size() >= 3 && pages.size() <= 8, pages::toString);
    long care = pages.stream().filter(f -> f.contains("-care")).count();
    assertTrue(care <= 2, pages::toString);
    assertTrue(sheets.size() - pages.size() <= 8, sheets::toString);
    assertTrue(sheets.get(0).equals("sheets/01-cover.svg"), sheets::toString);
  }

  /** What a designer would also say to a household: seasons, ground, water and what harms. */
  private static final Set<String> SAID_BY_A_PROFESSIONAL =
      Set.of(
          "planting.harm",
          "planting.unverified",
          "planting.chill",
          "water.data",
          "site.path-slope",
          "work.comes-again",
          "work.resting-time");

  @ParameterizedTest
  @ValueSource(strings = {"urbana-yard", "seattle-corner", "san-francisco-slope", "desert-basins"})
  void demo_findings_holdOnlyWhatAProfessionalWouldSay(String demo) {
    String findings = Samples.drawn(demo).get("findings.txt");
    Matcher rules = Pattern.compile("\\[([a-z]+\\.[a-z-]+)\\]").matcher(findings);
    Set<String> others = new TreeSet<>();
    int count = 0;
    while (rules.find()) {
      count++;
      others.add(rules.group(1));
    }
    assertTrue(count > 2, findings);
    others.removeAll(SAID_BY_A_PROFESSIONAL);
    assertEquals(Set.of(), others, findings);
    assertFalse(findings.contains("WARNING") || findings.contains("ERROR"), findings);
  }

  /** A yard of chips is little for a truck; half a yard is nothing to send one for. */
  @ParameterizedTest
  @MethodSource("yardloom.program.cli.Samples#plans")
  void demo_trucks_bringAYardAtLeast(String demo) {
    List<String> loads =
        Samples.drawn(demo).get("tables/work-deliveries.csv").lines().skip(1).toList();
    assertFalse(loads.isEmpty());
    for (String load : loads) {
      assertTrue(Double.parseDouble(load.split(",")[3]) >= 0.7, load);
    }
  }

  /** A swale is a hollow in the ground: on the cover it must not look like a shed. */
  @Test
  void desert_cover_tellsSwalesFromSheds() {
    String cover = Samples.drawn("desert-basins").get("sheets/01-cover.svg");
    assertTrue(cover.contains(">Swale<"), "no swale in the legend");
    assertTrue(cover.contains("picture-swale"), "no swale is drawn");
  }

  @Test
  void seattle_drawn_hasDeedSightTriangleUpperSetbackAndTanksByTheDay() {
    Map<String, String> files = Samples.drawn("seattle-corner");
    String plan = files.get("sheets/02-layout.svg");
    for (String wanted :
        new String[] {"clear from 2'-6&quot; to 8'-0&quot;", "Easement power", "Sight triangle"}) {
      assertTrue(
          plan.contains(wanted) || plan.contains(wanted.replace("&quot;", "\"")),
          wanted + " is not on the site plan");
    }
    String why = files.get("tables/buildable-limits.csv");
    assertTrue(why.contains("setback from east (corner side, 16.00 ft, above 25.00 ft)"), why);
    assertTrue(why.contains("sight triangle south/east"), why);
    assertTrue(files.get("tables/deed.csv").contains("R 20.00 ft"), files.get("tables/deed.csv"));
    assertTrue(
        files
            .get("results.json")
            .contains(
                "Day by day through Seattle-Tacoma airport, 1 Jan 2012 to 31 Dec 2012: 48 days in a"
                    + " row without rain at most"),
        "the tank table does not name the daily series");
  }

  /** A place with another code changes the shared file, not the yard. */
  @Test
  void seattle_withTheCodeOfAnotherPlace_takesItsSetbacksLegsAndRoots() throws IOException {
    Files.createDirectories(dir.resolve("regional"));
    for (String file :
        new String[] {
          "seattle-corner.groovy", "seattle-corner-deed.csv", "seattle-rain-2012.csv"
        }) {
      Files.copy(SAMPLES.resolve(file), dir.resolve(file));
    }
    Files.writeString(
        dir.resolve("regional/demo-street-code.groovy"),
        """
        setbackFor 'front', distance: 15.ft, rule: 'another code'
        setbackFor 'corner side', distance: 5.ft, rule: 'another code'
        sightRule legFirst: 10.ft, legSecond: 50.ft, clearFrom: 3.ft, clearTo: 10.ft, rule: 'another code'
        treeProtection factor: 18, rule: 'another code'
        """);
    Map<String, String> files = draw(dir.resolve("seattle-corner.groovy"), "seattle-corner");
    String why = files.get("tables/buildable-limits.csv");
    assertTrue(why.contains("setback from south (front, 15.00 ft)"), why);
    String plan = files.get("sheets/02-layout.svg");
    assertTrue(plan.contains("clear from 3'-0\" to 10'-0\"") || plan.contains("3'-0&quot; to 10"));
    assertTrue(plan.contains("50'-0"), "the longer leg is not measured");
    assertTrue(plan.contains("Protected roots, 18"), "the legend keeps the old factor");
    assertTrue(files.get("tables/lot-sides.csv").contains("another code"));
  }

  @Test
  void urbana_tapedWithABlunderDropped_tellsWhatHappened() throws IOException {
    String script = Files.readString(SAMPLES.resolve("urbana-yard.groovy"));
    assertTrue(script.contains("124.17 ft: its residual stood out"), "the comment is gone");
    Files.createDirectories(dir.resolve("regional"));
    Files.copy(
        SAMPLES.resolve("regional/tallgrass-flats.groovy"),
        dir.resolve("regional/tallgrass-flats.groovy"));
    // The dropped reading, put back, is found as the tape to measure again.
    Path again =
        Files.writeString(
            dir.resolve("urbana-yard.groovy"),
            script.replace(
                "tape se, 134.17.ft, name: 'SE stake'", "tape se, 124.17.ft, name: 'SE stake'"));
    Run run = Run.in(dir, "check", again.toString());
    assertTrue(run.out().contains("[site.tie-residual]"), run.out());
  }

  @Test
  void sanFrancisco_drawn_hasContoursSwaleAndSlopes() {
    Map<String, String> files = Samples.drawn("san-francisco-slope");
    String plan = files.get("sheets/02-layout.svg");
    for (String wanted :
        new String[] {"59.00 m", "level at 59.25 m", "Way of the water", "Contour line"}) {
      assertTrue(plan.contains(wanted), wanted + " is not on the site plan");
    }
    assertTrue(files.get("tables/swales.csv").contains("upper swale"));
    assertTrue(files.get("tables/level-beds.csv").contains("terrace 1"));
  }

  /**
   * By hand: a swale 2 ft wide at the bottom and 8 in deep with sides of 3:1 is 6 ft wide at the
   * top and holds 50 × (2 + 6) / 2 × 2/3 = 133.3 cu ft, 4.94 cu yd or 997 gal. The year's rain is
   * 7.22 in by the normals of 1991 to 2020 (secondary: abc15.com, March 2023); the demo's months
   * are rounded to a tenth. No sheet of cardboard is bought for ground without sod, and none is
   * mown.
   */
  @Test
  void desert_drawn_hasSwalesDeepChipsWithoutCardboardAndTheStationsRain() {
    Map<String, String> files = Samples.drawn("desert-basins");
    String swales = files.get("tables/swales.csv");
    for (String name : List.of("swale 66", "swale 85")) {
      assertTrue(swales.contains(name + ",50.0,6.0,8.0,4.94,997"), swales);
    }
    String year = files.get("tables/water-by-month.csv").lines().reduce((a, b) -> b).orElseThrow();
    assertEquals(7.22, Double.parseDouble(year.split(",")[2]), 0.05);
    assertFalse(files.get("tables/materials-order.csv").contains("cardboard, sheets"));
    assertTrue(files.get("tables/materials-order.csv").contains("wood-chip mulch"));
    assertFalse(files.get("tables/materials-labour.csv").contains("mow low"));
    assertFalse(files.get("findings.txt").contains("WARNING"), files.get("findings.txt"));
    assertTrue(files.get("results.json").contains("secondary, from the climate chart"));
  }
}
