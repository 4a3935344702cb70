package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;

/**
 * A plan's own sizes of pipe and parts at the tap, from the script to the printed tables. Bores of
 * 0.622 and 1.049 in are those of half-inch and one-inch pipe of schedule 40 (ASME B36.10, from
 * memory).
 */
class OwnPipesByHandTest {
  private static final String YARD =
      """
      plan 'Pipes by hand', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 50.ft), point(0.ft, 50.ft)])
      tap 'tap', point(4.ft, 10.ft)
      supply flow: 6.gpm, pressure: 50.psi
      bed('a', rect(24.ft, 8.ft, 40.ft, 4.ft), use: 'annual') { plant 'tomato' ; drip emitter: 0.9.gph, spacing: 12.inch, compensating: true, rated: 25.psi, exponent: 0.01 }
      bed('b', rect(24.ft, 20.ft, 40.ft, 4.ft), use: 'annual') { plant 'lettuce' ; drip emitter: 0.6.gph, spacing: 12.inch, compensating: true, rated: 25.psi, exponent: 0.01 }
      """;
  private static final String ONLY =
      "pipeSizes('size,bore_in,roll_ft,tube\\n"
          + "half,0.622,45,black pipe\\n"
          + "1 in,1.049,300,black pipe', only: true)\n";
  private static final String PARTS =
      """
      headPart('disc filter', like: 'filter', loss: 1.2.psi, at: 4.gpm)
      headParts('part,after,loss_psi,at_gpm,purpose\\nwater meter,timer,0.9,6,counts what the garden takes')
      """;

  /**
   * Outlets that compensate give 4 rows × 40 × 0.9 gph, 2.4 gpm. At 5 ft a second a bore of 0.622
   * in carries π / 4 × (0.622 / 12)² × 5 × 448.831 gpm, 4.736; 2.4 gpm run at 5 × 2.4 / 4.736 =
   * 2.534 ft a second. So the narrow pipe serves both.
   */
  @Test
  void lines_areLaidFromThePlansOwnSizes() {
    Drawn drawn = Drawn.of(YARD + ONLY);
    assertEquals("half", drawn.printed("lines", "1", "size"));
    assertEquals(0.622 * 0.0254, drawn.exact("lines", "1", "bore"), 1e-9);
    assertEquals("4.74", drawn.printed("lines", "1", "carries"));
    assertEquals("2.40", drawn.printed("lines", "1", "flow"));
    assertEquals(2.534 * 0.3048, drawn.exact("lines", "1", "speed"), 0.001 * 0.3048);
  }

  /**
   * The tube of both zones, 53.2 ft, takes 53.2 × 1.05 / 45 = 1.24 rolls of 45 ft, so two: 90 ft.
   */
  @Test
  void bill_hasRollsAndKindOfThePlansOwnSize() {
    Drawn drawn = Drawn.of(YARD + ONLY);
    assertEquals("53.2", drawn.printed("irrigation-parts", "half black pipe", "exact"));
    assertEquals("90.0", drawn.printed("irrigation-parts", "half black pipe", "order"));
    assertEquals(
        "2 rolls; 5 % for cuts, whole rolls",
        drawn.printed("irrigation-parts", "half black pipe", "allowance"));
  }

  /**
   * The narrowest that serves is taken: a narrower one before the shipped half inch of 0.6 in, one
   * of its name or bore in its place, a wider one not at all. Rolls as said, else of 100 ft.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "pipeSize('narrow', bore: 0.5.inch, roll: 500.ft) | narrow | 500.0",
        "pipeSize('1/2 in', bore: 0.57.inch) | 1/2 in | 100.0",
        "pipeSize('own half', bore: 15.24.mm, roll: 70.m) | own half | 229.7",
        "pipeSize('wide', bore: 3.inch) | 1/2 in | 100.0",
      })
  void ownSize_standsBesideTheShipped_orInTheirPlace(String word, String size, String order) {
    Drawn drawn = Drawn.of(YARD + word + "\n");
    assertEquals(size, drawn.printed("lines", "1", "size"));
    assertEquals(order, drawn.printed("irrigation-parts", size + " polyethylene tube", "order"));
  }

  /**
   * At 2.4 gpm the disc filter takes 1.2 × (2.4 / 4)² = 0.432 psi and the meter 0.9 × (2.4 / 6)² =
   * 0.144 psi; the usual timer 2 × (2.4 / 5)² = 0.461. Shut-off 0.5 × 0.48² = 0.115, so behind the
   * meter 50 - 0.115 - 0.461 - 0.144 = 49.280.
   */
  @Test
  void head_hasThePlansOwnParts() {
    Drawn drawn = Drawn.of(YARD + PARTS);
    double psi = 6.894757;
    assertEquals("3", row(drawn, "water meter"));
    assertEquals("5", row(drawn, "disc filter"));
    assertEquals(0.144, drawn.exact("head-assembly", "3", "takes") / psi, 0.001);
    assertEquals(49.280, drawn.exact("head-assembly", "3", "behind") / psi, 0.002);
    assertEquals(0.432, drawn.exact("head-assembly", "5", "takes") / psi, 0.001);
    assertEquals("counts what the garden takes", drawn.printed("head-assembly", "3", "purpose"));
    assertEquals(7, drawn.rows("head-assembly").size());
    assertEquals("1", drawn.printed("irrigation-parts", "disc filter", "pieces"));
    assertEquals("1", drawn.printed("irrigation-parts", "water meter", "pieces"));
    assertTrue(drawn.rows("irrigation-parts").stream().noneMatch("filter"::equals));
  }

  private static String row(Drawn drawn, String part) {
    int at = drawn.texts("head-assembly", "part").indexOf(part);
    return drawn.rows("head-assembly").get(at);
  }

  /** Two zones, two valves: what stands behind them is bought twice. */
  @Test
  void partBehindTheZoneValve_isBoughtForEachZone() {
    Drawn drawn =
        Drawn.of(
            YARD
                + "headPart('flow meter', after: 'zone valve', loss: 0.5.psi, at: 3.gpm,"
                + " purpose: 'tells of leaks')\n");
    assertEquals(2, drawn.rows("zones").size());
    assertEquals("2", drawn.printed("irrigation-parts", "flow meter", "pieces"));
  }

  @Test
  void partThatStandsNowhere_isFound() {
    Drawn drawn = Drawn.of(YARD + "headPart('tall valve', like: 'double check')\n");
    assertTrue(
        drawn.outcome().findings().stream()
            .anyMatch(
                f ->
                    f.text()
                        .equals(
                            "the part \"tall valve\" belongs in the place of the double check,"
                                + " which this head assembly has not")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pipeSize('a', bore: 0.9.m) | the bore of pipe is 0.08 in (2.0 mm) to 4.33 in (110.0 mm)",
        "pipeSize('a', bore: 1.mm) | got 0.04 in (1.0 mm); check the unit",
        "pipeSize('a', bore: 1.inch, roll: 900.m) | a roll of pipe is 3.3 ft (1.00 m) to 1640.4 ft"
            + " (500.00 m)",
        "pipeSizes('size,bore_in\\n"
            + "a,0.5\\n"
            + "b,0.501') | pipe sizes:3:1: the pipe size 'b', or one so wide,",
        "pipeSizes('size,bore_in,bore_mm\\na,0.5,12') | has `bore` in two units",
        "pipeSizes('size,bore\\na,0.5') | there is no column `bore`",
        "pipeSizes('size\\na') | needs its bore, in a column `bore_in` or `bore_mm`",
        "headPart('a') | say one of them",
        "headPart('a', like: 'filter', after: 'timer') | say one of them",
        "headPart('a', like: 'fliter') | Did you mean `filter`?",
        "headPart('a', like: 'filter', loss: 1.psi) | `loss:` and `at:` go together",
        "headPart('a', after: 'filter', loss: 1.psi, at: 2.gpm) | and its `purpose:`",
        "headPart('a', like: 'filter', loss: 41.psi, at: 2.gpm) | a part takes 0 to 40 psi (276"
            + " kPa)",
        "headParts('part,like\\n"
            + "a,filter\\n"
            + "b,filter') | head parts:3:1: a part 'b', or in its place, is already",
      })
  void whatCannotBe_isRefused(String words, String said) {
    PlanException e = assertThrows(PlanException.class, () -> Drawn.of(YARD + words + "\n"));
    assertTrue(e.problems().get(0).toString().contains(said), e.problems().get(0).toString());
  }
}
