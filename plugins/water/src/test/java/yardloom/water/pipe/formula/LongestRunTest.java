package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** By what the longest run is: so many outlets still do, and one more does not. */
class LongestRunTest {
  private static final double ALLOWED = 0.10;

  private static Lateral tube(double spacingM, int outlets) {
    return new Lateral(
        outlets,
        spacingM,
        0.0136,
        0,
        new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S),
        Emitter.rated(6e-7, 10, 0.5));
  }

  @Property(tries = 60)
  void longestRun_andOneMore_partTheFlows(
      @ForAll @DoubleRange(min = 0.15, max = 0.9) double spacingM,
      @ForAll @DoubleRange(min = 4, max = 30) double headM) {
    int most = LongestRun.outlets(tube(spacingM, 1), headM, ALLOWED);
    assertTrue(tube(spacingM, most).solve(headM).variation() <= ALLOWED);
    assertTrue(tube(spacingM, most + 1).solve(headM).variation() > ALLOWED);
  }

  @Property(tries = 100)
  void anyRunBefore_changesNothing(
      @ForAll @DoubleRange(min = 0.15, max = 0.9) double spacingM,
      @ForAll @DoubleRange(min = 4, max = 30) double headM,
      @ForAll @IntRange(min = -3, max = 3) int off) {
    int most = LongestRun.outlets(tube(spacingM, 1), headM, ALLOWED);
    int before = Math.min(LongestRun.LIMIT, Math.max(1, most + off));
    assertEquals(most, LongestRun.outletsNear(before, tube(spacingM, 1), headM, ALLOWED));
  }
}
