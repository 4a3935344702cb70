package yardloom.work.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.region.Spread;
import yardloom.kernel.source.Source;
import yardloom.work.cost.Sampling.Percentiles;

class SamplingTest {
  private static Spread spread(double low, double likely, double high) {
    return new Spread(low, likely, high, "test", Source.plan("test"));
  }

  @Property(tries = 40, seed = "20261125")
  void oneInput_percentiles_matchTheTriangularDistribution(
      @ForAll @DoubleRange(min = 0, max = 50) double low,
      @ForAll @DoubleRange(min = 0, max = 20) double rise,
      @ForAll @DoubleRange(min = 0.1, max = 40) double fall) {
    Spread s = spread(low, low + rise, low + rise + fall);
    Percentiles p = new Sampling(List.of(s)).of(x -> x[0]);
    double width = rise + fall;
    // Analytic distribution function of the triangular distribution at the percentiles found.
    assertEquals(0.1, cdf(s, p.p10(), width), 0.002);
    assertEquals(0.5, cdf(s, p.p50(), width), 0.002);
    assertEquals(0.9, cdf(s, p.p90(), width), 0.002);
  }

  private static double cdf(Spread s, double x, double width) {
    return x <= s.likely()
        ? (x - s.low()) * (x - s.low()) / (width * Math.max(s.likely() - s.low(), 1e-300))
        : 1 - (s.high() - x) * (s.high() - x) / (width * (s.high() - s.likely()));
  }

  @Test
  void manyInputs_sum_approachesTheNormalRange() {
    // Twelve triangular (0, 1, 2): mean 12, variance 12/6; P90 = 12 + 1.2816 · √2 = 13.812.
    List<Spread> inputs = java.util.Collections.nCopies(12, spread(0, 1, 2));
    Percentiles p = new Sampling(inputs).of(x -> java.util.Arrays.stream(x).sum());
    assertEquals(12, p.p50(), 0.1);
    assertEquals(13.812, p.p90(), 0.12);
    assertEquals(10.188, p.p10(), 0.12);
  }

  @Test
  void sameInputs_twice_giveTheSame() {
    List<Spread> inputs = List.of(spread(1, 2, 4), spread(3, 3, 3));
    assertEquals(
        new Sampling(inputs).of(x -> x[0] * x[1]), new Sampling(inputs).of(x -> x[0] * x[1]));
  }

  @Test
  void inputWithoutWidth_keepsItsValue() {
    Percentiles p = new Sampling(List.of(spread(3, 3, 3))).of(x -> x[0]);
    assertEquals(3, p.p10());
    assertEquals(3, p.p90());
    assertTrue(p.p10() <= p.p50());
  }
}
