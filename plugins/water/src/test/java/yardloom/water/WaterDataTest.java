package yardloom.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source.Standing;
import yardloom.water.overflow.CurveNumbers;
import yardloom.water.overflow.formula.SoilGroup;
import yardloom.water.roof.RoofShares;

class WaterDataTest {
  /** C-10, C-11: curve number table of the SWB documentation after TR-55 Table 2-2, read. */
  @ParameterizedTest
  @CsvSource({
    "lawn good, 39, 61, 74, 80",
    "lawn poor, 68, 79, 86, 89",
    "lawn fair, 49, 69, 79, 84",
    "roof, 98, 98, 98, 98",
    "paving, 98, 98, 98, 98",
    "gravel, 76, 85, 89, 91",
    "homes on a quarter to a third of an acre, 57, 72, 81, 86",
  })
  void curveNumbers_areTabled(String cover, double a, double b, double c, double d) {
    assertEquals(a, CurveNumbers.of(cover, SoilGroup.A).value());
    assertEquals(b, CurveNumbers.of(cover, SoilGroup.B).value());
    assertEquals(c, CurveNumbers.of(cover, SoilGroup.C).value());
    assertEquals(d, CurveNumbers.of(cover, SoilGroup.D).value());
  }

  @Test
  void unknownCover_suggestsTheNearest() {
    PlanException e =
        assertThrows(PlanException.class, () -> CurveNumbers.of("lawn god", SoilGroup.A));
    assertTrue(e.getMessage().contains("`lawn good`"), e.getMessage());
  }

  /** Ranges of BS 8515 as quoted (tile 0.75 to 0.9, flat smooth 0.5, gravel 0.4 to 0.5), read. */
  @ParameterizedTest
  @CsvSource({
    "clay tile, 0.75, 0.90",
    "flat smooth membrane, 0.50, 0.50",
    "flat gravel, 0.40, 0.50",
    "sod, 0.75, 0.90",
  })
  void roofShare_liesInThePublishedRange(String surface, double low, double high) {
    double share = RoofShares.of(surface).value();
    assertTrue(share >= low && share <= high, surface + " " + share);
  }

  @Test
  void recalledFigures_saySo() {
    assertEquals(Standing.MEMORY, RoofShares.of("metal").source().standing());
  }
}
