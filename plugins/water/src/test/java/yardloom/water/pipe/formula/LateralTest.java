package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Flow;
import yardloom.water.drip.formula.DesignUniformity;

class LateralTest {
  private static final HazenWilliams HW = new HazenWilliams(140);

  private static double lph(double value) {
    return Flow.litresPerHour(value).cubicMetresPerSecond();
  }

  private static Lateral lateral(int n, double spacing, double mm, double q, double x) {
    return new Lateral(n, spacing, mm / 1000, 0, HW, Emitter.rated(lph(q), 10, x));
  }

  /** E4: engine run; 200 outlets of 0.9 gph at 20 psi on 0.600 in tube, 25 psi at the inlet. */
  @Test
  void usLateral_variesAsTheEngineSays_andGivesTheDesignUniformity() {
    double psiM = 0.3048 / 0.4333;
    Emitter emitter =
        Emitter.rated(Flow.gallonsPerHour(0.9).cubicMetresPerSecond(), 20 * psiM, 0.5);
    Lateral.Solution s = new Lateral(200, 0.3048, 0.6 * 0.0254, 0, HW, emitter).solve(25 * psiM);
    assertEquals(3.17820, Flow.cubicMetresPerSecond(s.inflowM3s()).gallonsPerMinute(), 3.2e-4);
    assertEquals(0.0699, s.variation(), 1e-4);
    assertEquals(0.98057, s.least() * 200 / s.inflowM3s(), 1e-4);
    assertEquals(3.606, PipeSpeed.metresPerSecond(s.inflowM3s(), 0.6 * 0.0254) / 0.3048, 1e-3);
    assertEquals(0.9182, DesignUniformity.of(0.05, 1, s.least() * 200 / s.inflowM3s()), 2e-4);
  }

  /** E9 and E10: fixed outflow; engine loss is full-flow loss times the factor. */
  @ParameterizedTest
  @CsvSource({
    "50, 0.30, 14.5, 4, 0.07275, 0.20170, 0.36069",
    "20, 0.50, 13.0, 8, 0.05693, 0.15141, 0.37602"
  })
  void fixedOutlets_loseFullFlowTimesFactor(
      int n, double spacing, double mm, double q, double loss, double full, double factor) {
    Lateral lateral = new Lateral(n, spacing, mm / 1000, 0, HW, new Emitter(lph(q), 0));
    double far = lateral.solve(20).headM()[n - 1];
    assertEquals(loss, 20 - far, 1e-5);
    double fullLoss = HW.gradient(lph(n * q), mm / 1000) * n * spacing;
    assertEquals(full, fullLoss, 1e-5);
    assertEquals(factor, (20 - far) / fullLoss, 1e-4);
  }

  /** D-18 to D-20: solver agrees with the engine to 5 digits; one outlet either way. */
  @ParameterizedTest
  @CsvSource({"2.0, 0.5, 10, 264", "3.5, 0.5, 10, 183", "2.0, 0.05, 20, 558"})
  void longestRun_withinTenPercent(double q, double x, double inletM, int expected) {
    int found = LongestRun.outlets(lateral(1, 0.30, 14.5, q, x), inletM, 0.10);
    assertEquals(expected, found, 1);
  }

  /** D-01: with a fifth less pressure flow is 0.8^x of what it was. */
  @ParameterizedTest
  @CsvSource({"0.5, 10.56", "0.6, 12.53", "0.46, 9.76", "1.0, 20"})
  void flowDrop_ofAFifthOfPressure(double x, double percent) {
    Emitter outlet = new Emitter(1, x);
    assertEquals(percent, (1 - outlet.flowM3s(8) / outlet.flowM3s(10)) * 100, 0.01);
  }

  /** D-02: q = k p^x (EPANET manual, chapter 3). */
  @ParameterizedTest
  @CsvSource({"0.5, 19.0", "0.6, 16.1", "1.0, 10.0"})
  void headDrop_ofTenPercentFlow(double x, double percent) {
    assertEquals(percent, new Emitter(1, x).headDrop(0.10) * 100, 0.05);
  }

  @Test
  void headThatDoesNotReachTheEnd_isRefused() {
    Lateral uphill = new Lateral(50, 0.3, 0.0145, 0.10, HW, Emitter.rated(lph(2), 10, 0.5));
    assertThrows(IllegalArgumentException.class, () -> uphill.solve(1.0));
    assertTrue(uphill.solve(3.0).headM()[49] > 0);
  }

  @Property(tries = 200, seed = "20261125")
  void levelLateral_fallsAllTheWay_andKeepsMass(
      @ForAll @IntRange(min = 2, max = 120) int n,
      @ForAll @DoubleRange(min = 0.1, max = 0.6) double spacing,
      @ForAll @DoubleRange(min = 10, max = 25) double mm,
      @ForAll @DoubleRange(min = 0, max = 1) double x,
      @ForAll @DoubleRange(min = 5, max = 20) double inletM) {
    Lateral.Solution s = lateral(n, spacing, mm, 2, x).solve(inletM);
    double sum = s.flowM3s()[0];
    for (int i = 1; i < n; i++) {
      assertTrue(s.headM()[i] <= s.headM()[i - 1]);
      sum += s.flowM3s()[i];
    }
    assertTrue(s.headM()[0] < inletM);
    assertEquals(s.inflowM3s(), sum, sum * 1e-12);
    if (x == 0) {
      assertEquals(0, s.variation(), 1e-12);
    }
  }

  @Property(tries = 100, seed = "20261125")
  void lateral_ofFriction_thatIsHalved_givesMore(
      @ForAll @IntRange(min = 2, max = 120) int n,
      @ForAll @DoubleRange(min = 5, max = 20) double h) {
    Lateral smooth =
        new Lateral(n, 0.3, 0.0145, 0, new HazenWilliams(150), Emitter.rated(lph(2), 10, 0.5));
    assertTrue(smooth.solve(h).inflowM3s() >= lateral(n, 0.3, 14.5, 2, 0.5).solve(h).inflowM3s());
  }

  /**
   * Chords find the far head in some ten marches, where halving would take some fifty, one for each
   * bit of a double; level, uphill and downhill, by any law of outlets.
   */
  @ParameterizedTest
  @CsvSource({
    "200, 0.5, 0, 20",
    "200, 0.05, 0, 20",
    "50, 1, 0, 12",
    "100, 0.5, 0.05, 15",
    "100, 0.5, -0.05, 5",
    "3, 0.6, 0, 2",
    "10, 0.5, -0.5, 5",
    "400, 0.5, 0, 40"
  })
  void solving_takesFewMarches(int outlets, double exponent, double rise, double inletM) {
    AtomicInteger asked = new AtomicInteger();
    Friction counted =
        (flow, diameter) -> {
          asked.incrementAndGet();
          return HW.gradient(flow, diameter);
        };
    Lateral lateral =
        new Lateral(outlets, 0.3, 0.0145, rise, counted, Emitter.rated(lph(2), 10, exponent));
    Lateral.Solution found = lateral.solve(inletM);
    double head = found.headM()[0] + 0.3 * (HW.gradient(found.inflowM3s(), 0.0145) + rise);
    assertEquals(inletM, head, 1e-9);
    assertTrue(asked.get() <= 25 * outlets, asked.get() / outlets + " marches");
  }
}
