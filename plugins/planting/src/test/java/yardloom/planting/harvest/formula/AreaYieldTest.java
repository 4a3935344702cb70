package yardloom.planting.harvest.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.harvest.YieldCheck;

class AreaYieldTest {
  private static final OutsideRows ROWS = OutsideRows.of(AreaYieldTest.class, "area-yields.csv");

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "area-yields.csv", numLinesToSkip = 1)
  void yields_areThoseOfTheirSources(
      String id, double pounds, double squareFeet, double expected, double tolerance) {
    double found =
        AreaYield.of(Mass.pounds(pounds), Area.squareFeet(squareFeet)).poundsPerSquareFoot();
    ROWS.check(id, expected, found, tolerance);
  }

  /** P15: the source rounds its own 513.5 lb on 30 × 30 ft to 0.6. */
  @Test
  void samplePlan_isNotTheSourcesOwnRoundedFigure() {
    AreaYield plan = AreaYield.of(Mass.pounds(513.5), Area.squareFeet(900));
    assertNotEquals(0.6, plan.poundsPerSquareFoot(), 0.02);
    assertEquals("0.57", plan.number(UnitSystem.US));
  }

  /** 1 lb/sq ft is 4.882428 kg/m² (NIST SP 811, Appendix B). */
  @Test
  void metric_hasTheFactorOfNist() {
    AreaYield one = AreaYield.poundsPerSquareFoot(1);
    assertEquals(4.882428, one.kilogramsPerSquareMetre(), 5e-7);
    assertEquals(1, one.poundsPerSquareFoot(), 1e-12);
    assertEquals("4.88", one.number(UnitSystem.METRIC));
    assertEquals("kg/m²", AreaYield.unit(UnitSystem.METRIC));
  }

  /** P14: half of 0.5 to one and a half times 1.24; the traditional 0.6 and both lie inside. */
  @Test
  void band_isThatOfTheTwoSourcesWithHalfToSpare() {
    assertEquals(0.25, YieldCheck.LEAST.poundsPerSquareFoot(), 1e-12);
    assertEquals(1.86, YieldCheck.MOST.poundsPerSquareFoot(), 1e-12);
    for (double usual : new double[] {0.5, 0.571, 0.6, 1.24}) {
      AreaYield yield = AreaYield.poundsPerSquareFoot(usual);
      assertTrue(yield.compareTo(YieldCheck.LEAST) > 0 && yield.compareTo(YieldCheck.MOST) < 0);
    }
  }

  @Test
  void noGround_isRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> AreaYield.of(Mass.pounds(1), Area.squareFeet(0)));
    assertThrows(IllegalArgumentException.class, () -> new AreaYield(-1));
  }

  /** By hand: three rows a third as far apart as usual hold 1 + 2/3 rows' worth. */
  @Test
  void crowding_countsClosenessBetweenTheOuterRows() {
    assertEquals((1 + 2 / 3.0) / 3, share(36, 12, 12, 36), 1e-12);
    assertEquals(1, share(36, 36, 12, 36), 1e-12, "a single row");
    assertEquals(1, share(100, 10, 40, 36), 1e-12, "wider than usual");
    assertEquals(1, share(6, 12, 12, 36), 1e-12, "narrower than one plant");
  }

  private static double share(double width, double spacing, double rows, double usual) {
    return Crowding.share(
        Length.inches(width), Length.inches(spacing), Length.inches(rows), Length.inches(usual));
  }
}
