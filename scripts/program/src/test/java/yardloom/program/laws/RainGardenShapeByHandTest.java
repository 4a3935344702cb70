package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A rain garden with its place, from plan text to the table, the plan and the finding. */
class RainGardenShapeByHandTest {
  private static final String YARD =
      """
      plan 'Rain garden', units: 'us'
      lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 60.ft), point(0.ft, 60.ft)])
      soilTexture 'sandy loam', organic: 3
      building 'barn', rect(10.ft, 10.ft, 20.ft, 15.ft), eaves: 9.ft
      roof 'barn roof', rect(10.ft, 10.ft, 20.ft, 15.ft), surface: 'metal'
      rainGarden 'barn roof', slope: 2, storm: %s.inch, shape: rect(50.ft, 20.ft, 8.ft, %s.ft)
      """;

  private static List<String> findings(Drawn drawn) {
    return drawn.outcome().findings().stream()
        .filter(f -> f.rule().equals("water.basin"))
        .map(f -> f.text())
        .toList();
  }

  /**
   * On 2 percent a garden is 3 in deep at the shallow end (University of Rhode Island): 8 × 11 ft
   * hold 22 cu ft, 164.6 gal. It lies 20 ft from the barn. The inch off 300 sq ft at CN 98 (TR-55)
   * is 0.79 in: 148 gal.
   */
  @Test
  void gardenAtItsPlace_isDrawnAndHolds() {
    Drawn drawn = Drawn.of(YARD.formatted("1", "11"));
    String name = "rain garden of barn roof";
    assertEquals(88 * 0.3048 * 0.3048, drawn.exact("basins", name, "area"), 1e-6);
    assertEquals("165", drawn.printed("basins", name, "holds"));
    assertEquals("148", drawn.printed("basins", name, "runoff"));
    assertEquals("20.0", drawn.printed("basins", name, "from-building"));
    assertEquals(List.of(), findings(drawn));
    assertTrue(
        drawn.outcome().layers().entrySet().stream()
            .filter(e -> e.getKey().id().equals("water.roof-water"))
            .anyMatch(e -> e.getValue().marks().toString().contains(name)));
    List<String> elements = drawn.texts("work-elements", "element");
    assertTrue(elements.contains(name), elements.toString());
    assertFalse(elements.contains("rain garden for barn roof"), "dug once, listed once");
  }

  /** 8 × 9 ft hold 18 cu ft, 135 gal, less than the 148 of the storm. */
  @Test
  void smallGarden_isAFinding() {
    assertEquals(1, findings(Drawn.of(YARD.formatted("1", "9"))).size());
  }
}
