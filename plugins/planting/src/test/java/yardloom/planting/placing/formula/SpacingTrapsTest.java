package yardloom.planting.placing.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** Published spacing tables that round wrongly, as negative tests (P01, P03, P04, P06, P10). */
class SpacingTrapsTest {
  private static int count(double widthIn, double lengthIn, double spacingIn, Layout layout) {
    Shape bed =
        Shape.rectangle(Point.metres(1, 2), Length.inches(widthIn), Length.inches(lengthIn));
    Length spacing = Length.inches(spacingIn);
    return Lattice.points(bed, spacing, Lattice.rowSpacing(spacing, layout), layout).size();
  }

  /** Trap 4: 1.44, 2.25 and 0.25 plants a square foot, not the printed 1.45, 2.28 and 0.24. */
  @ParameterizedTest
  @CsvSource({"10, 1.44, 1.45", "8, 2.25, 2.28", "24, 0.25, 0.24"})
  void density_ofASpacing_isTheExactOneNotThePrinted(double in, double exact, double printed) {
    double ground = 40 * in * 60 * in / 144;
    double density = count(40 * in, 60 * in, in, Layout.SQUARE) / ground;
    assertEquals(exact, density, 1e-9);
    assertNotEquals(printed, density, 5e-3);
  }

  /** P04: 120 sq ft at 10 in hold 172.8 plants by area; a chart reads 174 from 1.45. */
  @Test
  void bedOf120SquareFeet_atTenInches_holdsNoMoreThanItsArea() {
    int plants = count(120, 144, 10, Layout.SQUARE);
    assertEquals(12 * 14, plants);
    assertTrue(plants < 172.8);
  }

  /** P06: 115.47 by area in 100 sq ft at 12 in; rows 10.392 in apart lose plants at the edge. */
  @Test
  void staggeredDensity_ofALargeField_isFifteenPercentMore() {
    double per100 = count(2400, 2400, 12, Layout.STAGGERED) / 400.0;
    assertTrue(per100 < 115.47 && per100 > 115.47 - 1, () -> "plants: " + per100);
  }

  /** Trap 6: staggered is fewer in a small bed (P07: 32 and 30). */
  @Test
  void staggered_inASmallBed_isFewerThanSquare() {
    assertTrue(count(48, 96, 12, Layout.STAGGERED) < count(48, 96, 12, Layout.SQUARE));
  }

  /** Trap 8: 123.75 trees an acre at 22 × 16 ft; a page prints the 132 of 22 × 15 ft. */
  @Test
  void treesAnAcre_at22By16Feet_areNot132() {
    Shape orchard = Shape.rectangle(Point.metres(0, 0), Length.feet(1600), Length.feet(220));
    double trees =
        Lattice.points(orchard, Length.feet(16), Length.feet(22), Layout.SQUARE).size()
            / (1600 * 220 / 43_560.0);
    assertEquals(123.75, trees, 0.01);
  }
}
