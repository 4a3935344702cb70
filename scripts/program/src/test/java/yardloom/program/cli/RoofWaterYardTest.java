package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Roof water from a script to the printed tables, worked by hand beside each figure; no two inputs
 * are equal. It rains 20 mm on every tenth day of the year and never else. Source: geometry, the
 * definitions in each comment, TR-55 for the curve numbers.
 */
class RoofWaterYardTest {
  private static final String YARD =
      """
      plan 'Roof water', units: 'metric', currency: 'EUR'
      site 'Urbana', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      soilTexture 'sandy loam', organic: 3
      dailyRain(fileText('rain.csv'), station: 'by hand', source: 'made up')
      cloudburst 100.mm, source: 'made up'
      lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 15.m), point(0.m, 15.m)])
      building('house', rect(2.m, 1.m, 8.m, 6.m), eaves: 3.m)
      roof 'back', rect(2.m, 2.m, 8.m, 5.m), surface: 'metal'
      downspout point(9.9.m, 7.1.m), roof: 'back', inside: 80.mm
      tank('box', point(11.m, 7.6.m), roof: 'back') {
        box width: 1.m, depth: 50.cm, height: 60.cm
        stand 40.cm
        serves(['berries'])
        inlet firstFlush: 0.5.mm, screened: 0.8
        costs 250
      }
      overflow(line([point(11.m, 7.6.m), point(15.m, 11.m)]), from: 'box', inside: 90.mm)
      basin('low corner', rect(14.m, 10.5.m, 4.m, 3.m), drains: 'back', depth: 15.cm, storm: 40.mm)
      bed('berries', rect(2.m, 10.m, 6.m, 2.m), use: 'perennial') { plant 'red raspberry' }
      bed('other', rect(2.m, 13.m, 5.m, 1.m), use: 'annual')
      """;

  @TempDir Path dir;
  private Path tables;
  private String findings;

  @BeforeEach
  void draw() throws IOException {
    StringBuilder rain = new StringBuilder("date,rain_mm");
    for (int d = 1; d <= 365; d++) {
      rain.append('\n').append(LocalDate.ofYearDay(2022, d)).append(d % 10 == 1 ? ",20" : ",0");
    }
    Files.writeString(dir.resolve("rain.csv"), rain);
    Path script = dir.resolve("yard.groovy");
    Files.writeString(script, YARD);
    Run run = Run.in(dir, "draw", script.toString(), "--out", "out", "--as", "csv");
    assertTrue(run.code() <= ExitCode.FINDINGS, run.err());
    tables = dir.resolve("out/yard/tables");
    findings = Files.readString(dir.resolve("out/yard/findings.txt"));
  }

  private List<String[]> rows(String table) throws IOException {
    return Files.readAllLines(tables.resolve(table + ".csv")).stream()
        .map(r -> r.split(","))
        .toList();
  }

  private String cell(String table, String row, int column) throws IOException {
    return rows(table).stream().filter(r -> r[0].equals(row)).findFirst().orElseThrow()[column];
  }

  private double number(String table, String row, int column) throws IOException {
    return Double.parseDouble(cell(table, row, column));
  }

  /** 1 × 0.5 × 0.6 m hold 300 L and weigh 300 kg; 0.6 m of water press 0.6 × 9.8 = 5.9 kPa. */
  @Test
  void tank_holdsWeighsAndPresses() throws IOException {
    assertEquals("300", cell("tanks", "box", 4));
    assertEquals("300", cell("tanks", "box", 5));
    assertEquals("6", cell("tanks", "box", 7));
    // Level ground: 0.4 + 0.6 = 1 m, 9.8 kPa; nearly empty 0.4 + 0.1 m, 4.9 kPa.
    assertEquals("10", cell("tank-head", "berries", 3));
    assertEquals("5", cell("tank-head", "berries", 4));
    assertEquals(2, rows("tank-head").size(), "the other bed is not served");
  }

  /**
   * Each storm comes after dry days: (20 − 0.5) mm × 40 m² × 0.95 × 0.8 = 592.8 L, more than the
   * tank holds. Use before rain: in ten days it gives 300 L or the need, so in a month the lesser
   * of the need and 300 L × days / 10; storms fall on other days of the month than its first, which
   * is half a tank at each change between full and short months.
   */
  @Test
  void tank_givesAStormOrTheNeed() throws IOException {
    double used = 0;
    String[] names = {
      "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };
    double most = 0;
    for (int m = 0; m < 12; m++) {
      double need = number("water-by-month", names[m], 5);
      used += Math.min(need, 30 * LocalDate.of(2022, m + 1, 1).lengthOfMonth());
      most = Math.max(most, need);
    }
    assertTrue(most > 1000, "a month that is short, to tell by: " + most);
    double printed =
        Double.parseDouble(
            rows("tank-sizes").stream()
                .filter(r -> r[1].equals("box"))
                .findFirst()
                .orElseThrow()[2]);
    assertEquals(used, printed, 300);
  }

  /**
   * A round downspout of 80 mm: 50.27 cm² = 7.791 sq in, × 1,200 / 3.937 in/h = 2,375 sq ft = 220.6
   * m²; the roof sheds 40 m² × 0.1 m/h = 4,000 L/h.
   */
  @Test
  void downspout_drainsMoreThanTheRoof() throws IOException {
    assertEquals(220.6, number("roof-drainage", "back", 10), 0.1);
    assertEquals(4000, number("roof-drainage", "back", 3), 1);
    assertFalse(findings.contains("in a cloudburst"), findings);
  }

  /**
   * CN 98: S = 5.184 mm; (40 − 1.037)² / (40 + 4.147) = 34.39 mm on 40 m² are 1,375 L; 12 m² × 0.15
   * m hold 1,800 L, 131 %; at 20 mm an hour, the lower end for sandy loam, 7.5 h. From (10, 7) to
   * (14, 10.5): √(16 + 12.25) = 5.32 m.
   */
  @Test
  void basin_holdsItsStorm() throws IOException {
    assertEquals(1375, number("basins", "low corner", 3), 1);
    assertEquals(1800, number("basins", "low corner", 6), 0.5);
    assertEquals(131, number("basins", "low corner", 7), 0.5);
    assertEquals(7.5, number("basins", "low corner", 8), 0.05);
    assertEquals(5.32, number("basins", "low corner", 9), 0.01);
    assertFalse(findings.contains("[water.basin]"), findings);
    assertFalse(findings.contains("[water.overflow]"), findings);
  }

  /**
   * 48 m² of house at 34.39 mm shed 1,651 L; lawn in fair condition, group A, CN 49: 0.2 × 264 mm =
   * 53 mm are held back, more than the storm. The basin keeps 1,375 L of them: 275 L leave.
   */
  @Test
  void lot_letsGoLess() throws IOException {
    assertEquals(1651, number("lot-runoff", "Leaves the lot", 3), 1);
    assertEquals(275, number("lot-runoff", "Leaves the lot", 5), 2);
    assertEquals(252, number("lot-runoff", "lawn", 2), 0.05);
    assertEquals(235, number("lot-runoff", "lawn", 4), 0.05);
  }

  /** A bigger tank never supplies less, nor lets more run over. */
  @Test
  void biggerTanks_neverSupplyLess() throws IOException {
    double used = -1;
    double over = 1e9;
    List<String[]> rows = rows("tank-sizes");
    for (String[] row : rows.subList(1, rows.size())) {
      assertTrue(Double.parseDouble(row[2]) >= used);
      assertTrue(Double.parseDouble(row[7]) <= over);
      used = Double.parseDouble(row[2]);
      over = Double.parseDouble(row[7]);
      // 37 storms of 592.8 L: what comes in is used or runs over, within what stays in the tank.
      assertEquals(37 * 592.8, used + over, Double.parseDouble(row[0]) + 2, row[0]);
    }
    assertEquals(10, rows.size(), "the heading, eight usual sizes and the plan's own");
  }

  /**
   * In a year in which rain falls on 1 January alone, watering brings all that is used but for what
   * is missing on the last evening, which is less than two fillings of the easily drawn water; the
   * rain finds the soil full and drains away.
   */
  @Test
  void dryYear_isWateredThroughout() throws IOException {
    StringBuilder rain = new StringBuilder("date,rain_mm");
    for (int d = 1; d <= 365; d++) {
      rain.append('\n').append(LocalDate.ofYearDay(2022, d)).append(d == 1 ? ",50" : ",0");
    }
    Files.writeString(dir.resolve("rain.csv"), rain);
    Run.in(dir, "draw", dir.resolve("yard.groovy").toString(), "--out", "dry", "--as", "csv");
    tables = dir.resolve("dry/yard/tables");
    double use = number("soil-water", "berries", 5);
    assertTrue(use > 400, "a use to tell by: " + use);
    assertEquals(use, number("soil-water", "berries", 6), 2 * number("soil-water", "berries", 4));
    assertEquals(50, number("soil-water", "berries", 8), 0.5);
    assertTrue(number("soil-water", "berries", 10) > 60, "without watering it is short for months");
    // Six tenths of a metre, or the soil's depth: what is held is the available share of it.
    double depthMm = 10 * number("soil-water", "berries", 2);
    double heldMm = number("soil-water", "berries", 3);
    assertEquals(0.12, heldMm / depthMm, 0.05, "sandy loam holds some 12 % for plants");
  }
}
