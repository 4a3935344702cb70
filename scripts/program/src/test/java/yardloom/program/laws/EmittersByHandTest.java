package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Panel;

/**
 * Single emitters by trees and shrubs, and rows along the contour, from plan text to the printed
 * tables; no two inputs are equal.
 *
 * <p>Sources: wetted share = wetted area / root area, NRCS practice standard 441; widths that one
 * emitter wets, a design manual's table (coarse 1 to 3 ft, fine 3 to 6 ft; its middle at 1 gph, its
 * high end at 2); q = k × √p, EPANET 2.2 manual.
 */
class EmittersByHandTest {
  private static final String YARD =
      """
      plan 'Single emitters', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      soilTexture '%s', organic: 3
      lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 50.ft), point(0.ft, 50.ft)])
      tap 'bib', point(3.ft, 3.ft)
      supply flow: 3.gpm, pressure: 50.psi
      tree('apple', point(50.ft, 30.ft), crown: 15.ft, height: 14.ft, trunk: 1.inch, standing: false) {
        species 'apple (semi-dwarf)'
        emitters flow: 1.gph, share: 0.5
      }
      bed('shrubs', rect(10.ft, 10.ft, 24.ft, 5.ft), use: 'perennial') {
        emitters flow: 2.gph, rated: 15.psi
        plant 'highbush blueberry'
      }
      """;

  private static double number(Drawn drawn, String table, String row, String column) {
    return Double.parseDouble(drawn.printed(table, row, column));
  }

  /**
   * The apple grows 15 ft wide, 176.7 sq ft: half of that over π / 4 × 2² = 3.14 sq ft is 28.1, 29
   * by the tenth left over; on clay loam, 4.5 ft wide, 15.9 sq ft, 5.56: 6. A blueberry 5 ft wide
   * with emitters of twice the flow, 19.6 sq ft × 0.6 over π / 4 × 3²: 1.67, 2 each on sand; over π
   * / 4 × 6² 0.42, one each on clay loam.
   */
  @Test
  void emitters_byMatureSpreadAndSoil() {
    Drawn sand = Drawn.of(YARD.formatted("sandy loam"));
    Drawn clay = Drawn.of(YARD.formatted("clay loam"));
    assertEquals("15.0", sand.printed("emitters", "apple", "spread"));
    assertEquals("5.0", sand.printed("emitters", "shrubs", "spread"));
    assertEquals("29", sand.printed("emitters", "apple", "each"));
    assertEquals("6", clay.printed("emitters", "apple", "each"));
    assertEquals("2", sand.printed("emitters", "shrubs", "each"));
    assertEquals("1", clay.printed("emitters", "shrubs", "each"));
    assertEquals("29", sand.printed("irrigation", "apple", "outlets"));
    // 29 × 3.14 sq ft of the 173 sq ft that lie a foot and more off the trunk.
    double ring = Math.PI / 4 * (15 * 15 - Math.pow(2 + 1 / 12.0, 2));
    assertEquals(100 * 29 * Math.PI / ring, number(sand, "irrigation", "apple", "wetted"), 0.6);
  }

  /** Who sets emitters goes by the plants; the mean distance of a hydraulic row tells nothing. */
  @Test
  void laying_setsEmittersByThePlants() {
    Drawn clay = Drawn.of(YARD.formatted("clay loam"));
    assertEquals("by the plants", clay.printed("drip-rows", "apple", "outlets"));
    assertEquals("by the plants", clay.printed("drip-rows", "shrubs", "outlets"));
    String laying =
        clay.outcome().sheets().stream()
            .flatMap(sheet -> sheet.panels().stream())
            .filter(Panel.Notes.class::isInstance)
            .map(Panel.Notes.class::cast)
            .map(notes -> notes.paragraphs().toString())
            .collect(Collectors.joining());
    assertTrue(laying.contains("6 emitters spread evenly round the tree."), laying);
    assertTrue(laying.contains(" emitters where the tube passes the plants."), laying);
  }

  /**
   * Four bushes of two emitters: 8 × 2 × √(25 / 15) + 29 × 1 × √(25 / 20) = 20.7 + 32.4 gph behind
   * the regulator of 25 psi, 0.88 gpm, less what the lines take; bought are 8, 29 and plain tube.
   */
  @Test
  void emitters_areCountedInFlowZoneTimetableAndBill() {
    Drawn drawn = Drawn.of(YARD.formatted("sandy loam"));
    int bushes = (int) number(drawn, "emitters", "shrubs", "plants");
    assertEquals(2 * bushes, number(drawn, "irrigation", "shrubs", "outlets"));
    double shrubs = 2 * bushes * 2 * Math.sqrt(25 / 15.0) / 60;
    double apple = 29 * Math.sqrt(25 / 20.0) / 60;
    assertEquals(shrubs, number(drawn, "irrigation", "shrubs", "flow"), 0.02 * shrubs + 0.005);
    assertEquals(apple, number(drawn, "irrigation", "apple", "flow"), 0.02 * apple + 0.005);
    double both = drawn.sum("zones", "flow");
    assertEquals(60 * (shrubs + apple) * 3.785411784, both, 0.02 * both);
    assertFalse(drawn.rows("timetable").isEmpty());
    assertEquals(29, number(drawn, "irrigation-parts", "emitter, 1.00 gph", "pieces"));
    assertEquals(2 * bushes, number(drawn, "irrigation-parts", "emitter, 2.00 gph", "pieces"));
    double tube =
        number(drawn, "irrigation", "apple", "length")
            + number(drawn, "irrigation", "shrubs", "length");
    assertEquals(tube, number(drawn, "irrigation-parts", "tube without outlets", "exact"), 0.11);
    assertTrue(drawn.rows("irrigation-parts").stream().noneMatch(r -> r.startsWith("dripline")));
  }

  /** Ground that falls 7.2 ft in 72 to the west: 10 percent along beds that lie east. */
  private static String slope(String more) {
    return """
    plan 'Slope', units: 'us'
    lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 50.ft), point(0.ft, 50.ft)])
    levels(contours: 1.ft) {
      level point(-1.ft, -1.ft), 100.ft
      level point(71.ft, -1.ft), 107.2.ft
      level point(71.ft, 51.ft), 107.2.ft
      level point(-1.ft, 51.ft), 100.ft
    }
    tap 'bib', point(60.ft, 3.ft)
    bed('down', rect(10.ft, 10.ft, 24.ft, 9.ft)) { drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 2.ft }
    bed('narrow', rect(10.ft, 22.ft, 25.ft, 4.ft)) { drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 2.ft }
    bed('across', rect(40.ft, 10.ft, 7.ft, 26.ft)) { drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 2.ft }
    """
        + more;
  }

  /** Along the contour 24 / 2 = 12 rows of 9 ft; along a bed 4 / 2 = 2 of 25 ft; 7 / 2: 4 of 26. */
  @Test
  void rows_followTheContour_whereTheGroundFallsAlongTheBed() {
    Drawn drawn = Drawn.of(slope(""));
    assertEquals("12", drawn.printed("irrigation", "down", "rows"));
    assertEquals("108.0", drawn.printed("irrigation", "down", "length"));
    assertEquals("10", drawn.printed("irrigation", "down", "falls"));
    assertEquals("2", drawn.printed("irrigation", "narrow", "rows"), "rows of 4 ft are all ends");
    assertEquals("50.0", drawn.printed("irrigation", "narrow", "length"));
    assertEquals("104.0", drawn.printed("irrigation", "across", "length"));
    // All outlets of a row lie level; the line to each takes what it takes.
    assertTrue(number(drawn, "drip-hydraulics", "down", "longest-row") < 9.1);
  }

  /** 9 / 2 = 4.5: five rows of 24 ft, where only 12 percent and more would turn them. */
  @Test
  void contourRows_saysFromWhichGrade() {
    Drawn drawn = Drawn.of(slope("contourRows from: 0.12\n"));
    assertEquals("5", drawn.printed("irrigation", "down", "rows"));
    assertEquals("120.0", drawn.printed("irrigation", "down", "length"));
    assertFalse(
        drawn.tables().get("irrigation").columns().stream().anyMatch(c -> c.id().equals("falls")));
  }
}
