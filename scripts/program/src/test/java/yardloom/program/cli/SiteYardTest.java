package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A yard from its script to the printed tables of the site; every figure is worked by hand beside
 * it, and no two inputs are equal, so that none can be swapped or dropped unseen. Source: areas of
 * rectangle, circle and trapezoid.
 */
class SiteYardTest {
  private static final String YARD =
      """
      plan 'Site yard', units: 'us'
      lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 110.ft), point(0.ft, 110.ft)]) {
        side 'south', role: 'front', setback: 21.ft, rule: 'demo'
        side 'east', role: 'side', setback: 6.ft, rule: 'demo'
        side 'north', role: 'rear', setback: 13.ft, rule: 'demo'
        side 'west', role: 'side', setback: 4.ft, rule: 'demo'
      }
      building 'house', rect(10.ft, 24.ft, 30.ft, 22.ft), eaves: 10.ft
      path 'walk', line([point(50.ft, 30.ft), point(50.ft, 62.ft)]), width: 3.5.ft, use: 'barrow'
      bed 'long', rect(8.ft, 60.ft, 4.5.ft, 18.ft)
      bed 'round', circle(point(25.ft, 70.ft), 5.ft)
      bed 'ring', ring(point(55.ft, 80.ft), 2.2.ft, 7.ft)
      bed 'slant', polygon([point(20.ft, 85.ft), point(34.ft, 85.ft), point(30.ft, 93.ft), point(20.ft, 93.ft)])
      """;

  @TempDir Path dir;
  private Path tables;

  @BeforeEach
  void draw() throws IOException {
    Path script = dir.resolve("yard.groovy");
    Files.writeString(script, YARD);
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out", "--as", "csv");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    tables = dir.resolve("out/yard/tables");
  }

  private String row(String table, String start) throws IOException {
    List<String> rows = Files.readAllLines(tables.resolve(table + ".csv"));
    return rows.stream().filter(r -> r.startsWith(start)).findFirst().orElse(rows.toString());
  }

  /** Front first and whole, then each further side what the earlier ones left. */
  @Test
  void setbacks_andWhatTheyLeave() throws IOException {
    // 70 × 21; 6 × (110 − 21); 13 × (70 − 6); 4 × (110 − 21 − 13); (70 − 10) × (110 − 34).
    assertEquals("1470,19.0909", lastTwo("buildable-limits", "\"setback from south"));
    assertEquals("534,6.9351", lastTwo("buildable-limits", "\"setback from east"));
    assertEquals("832,10.8052", lastTwo("buildable-limits", "\"setback from north"));
    assertEquals("304,3.9481", lastTwo("buildable-limits", "\"setback from west"));
    assertEquals("4560,59.2208", lastTwo("buildable-limits", "may be built on"));
    assertEquals("7700,100", lastTwo("buildable-limits", "lot"));
  }

  private String lastTwo(String table, String start) throws IOException {
    String[] cells = row(table, start).split(",");
    return cells[cells.length - 2] + "," + cells[cells.length - 1];
  }

  @Test
  void beds_areasAndEdges() throws IOException {
    // 4.5 × 18, 2 × 22.5; π 5², 2π 5; π (7² − 2.2²), 2π (7 + 2.2); (14 + 10) / 2 × 8, its slant
    // √80.
    assertEquals("long,perennial,81,45.0", row("beds", "long"));
    assertEquals("round,perennial,78.5398,31.4", row("beds", "round"));
    assertEquals("ring,perennial,138.7327,57.8", row("beds", "ring"));
    assertEquals("slant,perennial,96,40.9", row("beds", "slant"));
    // 81 + 78.5398 + 138.7327 + 96 = 394.2725.
    assertEquals("all beds,,394.2725,", row("beds", "all beds"));
  }

  @Test
  void areas_ofTheLot_addUp() throws IOException {
    // 30 × 22; 3.5 × 32; 7700 − 660 − 112 − 394.2725 = 6533.7275; shares of 7700.
    assertEquals("House,660,8.5714", row("areas", "House"));
    assertEquals("Walk,112,1.4545", row("areas", "Walk"));
    assertEquals("Open ground,6533.7275,84.8536", row("areas", "Open ground"));
  }

  /** From A, the corner at (10, 46): √(15² + 24²) = 28.30 ft; a ring by its outside. */
  @Test
  void roundBeds_areSetOutByTheirRadius() throws IOException {
    assertTrue(row("setting-out", "round").contains("28'-3½"), row("setting-out", "round"));
    assertTrue(row("setting-out", "round").contains("radius 5'-0"), row("setting-out", "round"));
    assertTrue(row("setting-out", "ring").contains("radius 7'-0"), row("setting-out", "ring"));
  }

  /**
   * Calls of 102, 60, 100 and 61.5 ft run 2 ft too far north and 1.5 ft too far west: 2.5 ft off.
   * Each call takes its share by length of 323.5 ft (compass rule): north 102 − 2 × 102 / 323.5 =
   * 101.37, east 60 + 1.5 × 60 / 323.5 = 60.28, and so on.
   */
  @Test
  void deed_isBalancedByTheCompassRule() throws IOException {
    Path script = dir.resolve("deed.groovy");
    Files.writeString(
        script,
        """
        plan 'Deed', units: 'us'
        def parcel = deed('Lot 7', start: point(0.ft, 0.ft)) {
          course('N 0-00-00 E', 102.ft, name: 'west')
          course('N 90-00-00 E', 60.ft, name: 'north')
          course('S 0-00-00 E', 100.ft, name: 'east')
          course('N 90-00-00 W', 61.5.ft, name: 'south')
        }
        lotFrom(parcel) { for (s in ['west', 'north', 'east', 'south']) side s, role: 'side' }
        """);
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out", "--as", "csv");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    tables = dir.resolve("out/deed/tables");
    assertTrue(row("deed", "west").endsWith(",102.0,0.0,101.4,0.5"), row("deed", "west"));
    assertTrue(row("deed", "north").endsWith(",0.0,60.0,-0.4,60.3"), row("deed", "north"));
    assertTrue(row("deed", "east").endsWith(",-100.0,0.0,-100.6,0.5"), row("deed", "east"));
    assertTrue(row("deed", "south").endsWith(",0.0,-61.5,-0.4,-61.2"), row("deed", "south"));
    String findings = Files.readString(dir.resolve("out/deed/findings.txt"));
    assertTrue(findings.contains("2.50 ft"), findings);
  }
}
