package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlets, and the powers of the laws, worked from q = k hˣ and by differences. */
class EmitterTest {
  private static final double EXACT = 1e-15;

  /** 4 mL/s at 9 m and x = 0.5: 2 mL/s at a quarter of the head. */
  @Test
  void ratedOutlet_givesHalfAtAQuarterOfTheHead() {
    Emitter plain = Emitter.rated(4e-6, 9, 0.5);
    assertEquals(4e-6, plain.flowM3s(9), EXACT);
    assertEquals(2e-6, plain.flowM3s(2.25), EXACT);
    assertEquals(0, plain.flowM3s(0));
    assertEquals(0, plain.flowM3s(-1));
    assertEquals(2.25, plain.headM(2e-6), 1e-9);
    assertEquals(2, plain.headPower(2e-6), 1e-12);
  }

  /**
   * k = 1 mL/s, x = 0.25, from 16 m on: there 16^0.25 = 2 mL/s, at 81 m 3 mL/s; below as the root
   * of the head: 1 mL/s at 4 m.
   */
  @Test
  void compensatingOutlet_followsTheRootBelowItsLeastHead() {
    Emitter from = new Emitter(1e-6, 0.25).from(16);
    assertEquals(3e-6, from.flowM3s(81), EXACT);
    assertEquals(2e-6, from.flowM3s(16), EXACT);
    assertEquals(1e-6, from.flowM3s(4), EXACT);
    assertEquals(4, from.headM(1e-6), 1e-9);
    assertEquals(16, from.headM(2e-6), 1e-6);
    assertEquals(81, from.headM(3e-6), 1e-6);
    assertEquals(2, from.headPower(1e-6), 1e-12);
    assertEquals(4, from.headPower(2.5e-6), 1e-12);
  }

  @Test
  void outletsOutsideTheLaw_areRefused_thoseAtItsEndsNot() {
    assertThrows(IllegalArgumentException.class, () -> new Emitter(-1e-9, 0.5));
    assertThrows(IllegalArgumentException.class, () -> new Emitter(1e-6, -0.01));
    assertThrows(IllegalArgumentException.class, () -> new Emitter(1e-6, 1.01));
    assertThrows(IllegalArgumentException.class, () -> new Emitter(1e-6, 0.5).from(-1));
    assertEquals(0, new Emitter(0, 0.5).flowM3s(5));
    assertEquals(1e-6, new Emitter(1e-6, 0).flowM3s(5), EXACT);
    assertEquals(5e-6, new Emitter(1e-6, 1).flowM3s(5), EXACT);
  }

  /** What Newton's method asks for is the slope of the logarithms, laminar, between and rough. */
  @ParameterizedTest
  @ValueSource(doubles = {500, 2500, 3500, 20_000, 1e6})
  void powerOfTheFactor_isItsSlope(double reynolds) {
    FrictionFactor factor = new FrictionFactor(0.001);
    double slope =
        (Math.log(factor.of(1.0001 * reynolds)) - Math.log(factor.of(0.9999 * reynolds)))
            / (Math.log(1.0001) - Math.log(0.9999));
    assertEquals(slope, factor.power(reynolds), 1e-5);
  }

  /** The factor's power and that of the square: loss by the flow is 1 where water is slow. */
  @Test
  void powerOfTheLoss_isOneInSlowWater_andBelowTwoInFast() {
    Friction.Bore bore = new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, 1e-6).in(0.016);
    // Re = 4 q / (π d ν): 1000 at 12.57 mL/s.
    assertEquals(1, bore.power(12.57e-6), 1e-12);
    double fast = bore.power(500e-6);
    assertTrue(fast > 1.7 && fast < 1.9, "smooth pipe, Blasius says 1.75: " + fast);
  }

  /** Any other law is differentiated: Hazen and Williams' goes by the power 1.852. */
  @Test
  void powerOfALawWithoutOne_isFoundByDifferences() {
    Friction.Bore bore = new HazenWilliams(150).in(0.02);
    assertEquals(1.852, bore.power(1e-4), 1e-3);
    assertEquals(new HazenWilliams(150).gradient(1e-4, 0.02), bore.gradient(1e-4));
  }

  /**
   * Ten metres down a bank of one in two, with outlets that draw next to nothing: 3 m at the tap
   * are 3.5 m at the first outlet and 8 m at the last.
   */
  @Test
  void steepLateral_gainsWhatItFalls() {
    Lateral down =
        new Lateral(10, 1, 0.0145, -0.5, new HazenWilliams(150), new Emitter(1e-12, 0.5));
    Lateral.Solution solution = down.solve(3);
    assertEquals(3.5, solution.headM()[0], 1e-6);
    assertEquals(8, solution.headM()[9], 1e-6);
  }
}
