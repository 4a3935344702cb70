package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What joins the head assembly to its zones, from plan text to the parts list; no two inputs are
 * equal. Source: q = k × √p of plain outlets (EPANET 2.2 manual, chapter 3), counting.
 */
class HeadPartsByHandTest {
  private static final String YARD =
      """
      plan 'Head', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      tap 'side tap', point(5.ft, 7.ft)
      bed('greens', rect(18.ft, 18.ft, 14.ft, 6.ft), use: 'annual') {
        drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 18.inch
        plant 'tomato'
      }
      """;

  private static final String DRY =
      """
      bed('dry', rect(18.ft, 26.ft, 6.ft, 3.ft), use: 'perennial') {
        drip emitter: 0.9.gph, spacing: 12.inch, rowSpacing: 18.inch
        plant 'lavender'
      }
      """;

  private static String regulator(Drawn drawn) {
    return drawn.printed("irrigation-parts", "pressure regulator, 25 psi", "allowance");
  }

  /** Two valves are joined by one tee, and each leads on through an adapter. */
  @Test
  void joints_areCountedByZones() {
    Drawn drawn = Drawn.of(YARD + DRY);
    assertEquals(List.of("1", "2"), drawn.rows("zones"));
    assertEquals(
        "1", drawn.printed("irrigation-parts", "threaded tees between the zone valves", "pieces"));
    assertEquals("2", drawn.printed("irrigation-parts", "threaded adapters for tube", "pieces"));
    Drawn one = Drawn.of(YARD);
    assertEquals("1", one.printed("irrigation-parts", "threaded adapters for tube", "pieces"));
    assertTrue(one.rows("irrigation-parts").stream().noneMatch(i -> i.startsWith("threaded tees")));
  }

  /**
   * 4 rows of 14 outlets, 56 × 0.6 gph × √(25 / 20) = 37.6 gph, 0.63 gpm less what pipe takes; 2
   * rows of 6, 12 × 0.9 × 1.118 = 12.1 gph, 0.20 gpm: below what many regulators hold.
   */
  @Test
  void regulator_saysTheFlowsItMustHold() {
    String both = regulator(Drawn.of(YARD + DRY));
    assertTrue(both.matches("its range must hold 0\\.20.gpm to 0\\.6[23].gpm"), both);
    String one = regulator(Drawn.of(YARD));
    assertTrue(one.matches("its range must hold 0\\.6[23].gpm"), one);
  }
}
