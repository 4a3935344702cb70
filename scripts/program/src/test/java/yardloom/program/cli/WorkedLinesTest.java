package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/**
 * A yard with two beds, a tap and a paved walk between, from the script to the printed tables of
 * lines, head and timetable, worked by hand.
 */
class WorkedLinesTest {
  private static final String PLAN =
      """
      plan 'Lines', units: 'us'
      site 'somewhere', latitude: 40.deg, longitude: -88.deg, elevation: 200.m, zone: 'America/Chicago'
      climateNormals('our town', rain: [2, 2, 3, 3, 4, 4, 1, 3, 3, 3, 3, 2],
        max: [36, 40, 52, 65, 76, 84, 87, 85, 79, 66, 52, 40],
        min: [20, 24, 33, 43, 53, 62, 66, 64, 56, 45, 35, 25], units: 'inch fahrenheit', source: 'demo')
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 90.ft), point(0.ft, 90.ft)])
      tap 'bib', point(10.ft, 10.ft)
      soilTexture 'clay loam', organic: 2
      supply pressure: 50.psi
      bucketTest volume: 3.gal, seconds: 36
      headAssembly regulator: 22.psi, backflow: 'double check'
      paving 'walk', rect(20.ft, 0.ft, 5.ft, 40.ft), surface: 'concrete'
      bed('a', rect(40.ft, 10.ft, 3.ft, 30.ft), use: 'perennial') {
        drip emitter: 0.8.gph, spacing: 10.inch, rowSpacing: 12.inch, compensating: true
        plant 'asparagus'
      }
      bed('b', rect(40.ft, 50.ft, 4.ft, 21.ft), use: 'perennial') {
        drip emitter: 0.6.gph, spacing: 18.inch, rowSpacing: 24.inch, rated: 15.psi, exponent: 0.6, bore: 0.5.inch
        plant 'garden strawberry'
      }
      bed('c', rect(60.ft, 50.ft, 4.ft, 21.ft), use: 'perennial') { dry 'sedums' }
      bed('d', rect(70.ft, 50.ft, 4.ft, 21.ft), use: 'perennial') { plant 'chives' }
      """;

  @TempDir private Path dir;
  private Map<String, String> files;

  @BeforeEach
  void draw() throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), PLAN);
    Run run = Run.in(dir, "draw", "plan.groovy", "--out", "out", "--as", "csv");
    files = Run.files(dir.resolve("out/plan"));
    assertTrue(!files.isEmpty(), run.out() + run.err());
  }

  private List<DataRow> rows(String table) {
    return DataTable.parse(table, files.get("tables/" + table + ".csv")).rows();
  }

  private DataRow row(String table, String column, String value) {
    return rows(table).stream().filter(r -> r.text(column).equals(value)).findFirst().orElseThrow();
  }

  /**
   * Supply: 3 gal in 36 s are 5 gpm, three quarters of it 3.75. Bed a has 36 outlets in each of 3
   * rows (30 ft / 10 in), 108 × 0.8 gph = 1.44 gpm, which they hold but for (21.6 / 20)^0.03 =
   * 1.002. Bed b has 14 in each of 2 rows, 28 × 0.6 gph = 0.28 gpm at 15 psi; at 21.9 psi ×
   * 1.46^0.6 = 1.255: 0.351.
   *
   * <p>Pipe to a: 30 ft along its edge from the tap to the corner, 0.5 ft to the first row. To b:
   * 30 ft, up the edge of a 30 ft, 10 ft of open ground, 1 ft to its first row: 71 ft; straight it
   * would be 50 ft of open ground and 8.3 ft under the walk. Under the walk 5 ft.
   *
   * <p>1.443 gpm in 0.600 in: 0.408709 × 1.443 / 0.36 = 1.64 ft/s (0.499 m/s); Re 7446, f 0.0338 by
   * Swamee and Jain; 9.30 m lose 0.0338 × 9.30 / 0.01524 × 0.499² / 19.61 = 0.262 m, an elbow 0.9 ×
   * 0.0127 = 0.011 m: 0.39 psi of 22. To b: 0.122 m/s, Re 1813, f 64 / Re: 0.038 m, 0.05 psi.
   */
  @Test
  void lines_areThoseWorkedByHand() {
    DataRow a = row("zones", "beds", "a");
    DataRow b = row("zones", "beds", "b");
    assertEquals("3.75", a.text("supply_gpm"));
    assertEquals("1.44", a.text("flow_gpm"));
    assertEquals("0.35", b.text("flow_gpm"));
    assertEquals("22.0", a.text("behind_psi"));
    assertEquals("21.6", a.text("least_psi"));
    DataRow toA = row("lines", "feeds", "a");
    DataRow toB = row("lines", "feeds", "b");
    assertEquals("30.5", toA.text("length_ft"));
    assertEquals("71.0", toB.text("length_ft"));
    assertEquals("5.0", toB.text("paved_ft"));
    assertEquals("1.6", toA.text("speed_ft"));
    assertEquals("21.6", toA.text("end_psi"));
    assertEquals("21.9", toB.text("end_psi"));
    assertEquals("1/2 in", toA.text("size"));
  }

  /**
   * At 1.443 of 5 gpm: tap 50 × (1 − 0.2886²) = 45.84 psi. Shares of what parts take at 5 gpm:
   * 0.0833. Shut-off 0.5 → 0.04; timer 2 → 0.17; double check 5 → 0.42; filter 2 → 0.17: 45.04
   * left.
   */
  @Test
  void head_leavesWhatIsWorkedByHand() {
    assertEquals("45.8", row("head-assembly", "part", "shut-off valve").text("behind_psi"));
    assertEquals("0.4", row("head-assembly", "part", "double check").text("takes_psi"));
    assertEquals("45.0", row("head-assembly", "part", "filter").text("behind_psi"));
    assertEquals("22.0", row("head-assembly", "part", "regulator").text("behind_psi"));
  }

  /**
   * 101.5 ft of tube × 1.05 are 106.6, two rolls of 100 ft; 5 ft of sleeve 5.25, 6. Trenches: 30 ft
   * shared, 0.5 to a, 41 to b. Rows 5. Dripline 3 × 30 + 2 × 21 and headers 2 + 2 are 136 ft, a
   * stake for 3 ft: 45.3, 46.
   */
  @Test
  void parts_areCountedFromTheGraph() {
    assertEquals(
        "200.0", row("irrigation-parts", "item", "1/2 in polyethylene tube").text("order_ft"));
    assertEquals(
        "6.0", row("irrigation-parts", "item", "sleeve pipe under paving").text("order_ft"));
    assertEquals("46", row("irrigation-parts", "item", "stakes for tube").text("pieces"));
    assertEquals("5", row("irrigation-parts", "item", "flush caps").text("pieces"));
    assertEquals("2", row("irrigation-parts", "item", "pressure regulator, 22 psi").text("pieces"));
    DataRow trenches = row("materials-labour", "task", "dig and fill trenches for pipe");
    assertTrue(trenches.text("amount").startsWith("71.5"), trenches.text("amount"));
  }

  @Test
  void bedsWithoutWater_areFound_unlessTheyAreDry() {
    String findings = files.get("findings.txt");
    assertTrue(findings.contains("bed \"d\": the bed has no dripline while others have"), findings);
    assertTrue(!findings.contains("bed \"c\": the bed has no dripline"), findings);
  }

  /**
   * Bed a gets 231 × 0.8 gph × 1.002 / (10 × 12) sq in = 1.54 in an hour, clay loam takes 5 mm,
   * 0.197 in (FAO manual 5); 0.26 in may stand: turns of 0.26 / (1.543 − 0.197) h = 11.6 minutes at
   * most, and a turn of 10 minutes is gone after 10 × 1.346 / 0.197 = 68.4, 69 minutes. Sunrise is
   * by 05:27 on 1 July there (almanac, from memory); the last of all turns ends by 05:17.
   */
  @Test
  void timetable_bringsTheNeed_inTurns_beforeSunrise() {
    List<DataRow> all = rows("timetable");
    LocalTime first = null;
    for (DataRow row : all) {
      if (row.text("every").isEmpty()) {
        continue;
      }
      double set = row.number("set_h");
      double need = row.number("need_h");
      // Hours are printed to a tenth.
      assertEquals(need, set, 0.05 * need + 0.1, row.text("month"));
    }
    DataRow july = all.stream().filter(WorkedLinesTest::isJulyOfA).findFirst().orElseThrow();
    assertEquals("10", july.text("minutes"));
    assertEquals("69", july.text("soak"));
    int turns = (int) july.number("turns");
    int days = (int) july.number("every");
    assertEquals(turns * 10 * 31.0 / days / 60, july.number("set_h"), 0.05);
    LocalTime start = LocalTime.parse(july.text("start"));
    Duration until = Duration.ofMinutes(turns * 10L + (turns - 1) * 69L);
    LocalTime end = start.plus(until);
    assertTrue(end.isBefore(LocalTime.of(5, 18)) && end.isAfter(LocalTime.of(5, 8)), "" + end);
    // 7 days' share of the month's need.
    assertEquals(july.number("need_h") * 60 * 7 / 31, july.number("by-hand"), 1);
    // Asparagus draws 0.95 of grass in July (FAO-56, Table 12), less the rain that counts, over 90
    // sq
    // ft, through 1.443 gpm at an efficiency of 0.81.
    DataRow water = row("water-by-month", "month", "Jul");
    double needIn = 0.95 * water.number("reference-et_inch") - water.number("effective-rain_inch");
    double needGal = needIn * 90 * 144 / 231;
    assertEquals(needGal / (1.443 * 60 * 0.81), july.number("need_h"), 0.06);
  }

  private static boolean isJulyOfA(DataRow row) {
    return row.text("group").endsWith(": a") && row.text("month").equals("Jul");
  }
}
