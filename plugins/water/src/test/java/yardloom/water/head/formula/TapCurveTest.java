package yardloom.water.head.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Pressure;

class TapCurveTest {
  /** Losses by the square of flow: half the open flow leaves three quarters of the pressure. */
  @Test
  void halfTheOpenFlow_leavesThreeQuarters_andAllOfItNothing() {
    Flow open = Flow.gallonsPerMinute(8);
    Pressure still = Pressure.psi(60);
    assertEquals(60, TapCurve.at(Flow.ZERO, still, open).psi(), 1e-9);
    assertEquals(45, TapCurve.at(Flow.gallonsPerMinute(4), still, open).psi(), 1e-9);
    assertEquals(0, TapCurve.at(open, still, open).psi(), 1e-9);
  }

  /**
   * EPANET 2.2 manual: minor losses go by the square of flow: 3 psi at 5 gpm are 0.75 at half of it.
   */
  @Test
  void lossOfAPart_goesByTheSquare() {
    Pressure loss =
        TapCurve.loss(Flow.gallonsPerMinute(2.5), Pressure.psi(3), Flow.gallonsPerMinute(5));
    assertEquals(0.75, loss.psi(), 1e-9);
  }
}
