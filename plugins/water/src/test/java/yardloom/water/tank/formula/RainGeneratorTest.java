package yardloom.water.tank.formula;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Made rain has the statistics that it is made from. */
class RainGeneratorTest {
  /** Rain of the Seattle normals in mm; wet days as weather services print them (from memory). */
  private static final double[] RAIN = {141, 89, 94, 69, 49, 40, 18, 22, 38, 88, 167, 136};

  private static final double[] WET = {18, 15, 17, 15, 12, 9, 5, 5, 8, 13, 18, 18};

  @Test
  void monthsMeans_areTheNormals() {
    double january = 0;
    double all = 0;
    for (double[] year : RainGenerator.years(RAIN, WET)) {
      for (int d = 0; d < 365; d++) {
        january += d < 31 ? year[d] : 0;
        all += year[d];
      }
    }
    assertEquals(141, january / RainGenerator.YEARS, 1e-6);
    assertEquals(951, all / RainGenerator.YEARS, 1e-6);
  }

  /**
   * 18 of January's 31 days are wet; a binomial count over 930 days with the chain's correlation of
   * 0.25 has a standard deviation of 20 days, 0.65 a year: three of them. After a wet day 0.25 +
   * 0.75 × 18 / 31 = 0.685 are wet, after a dry one 0.435.
   */
  @Test
  void wetDays_comeAsOftenAndAsLinkedAsTheChainSays() {
    int wet = 0;
    int wetAfterWet = 0;
    int before = 0;
    for (double[] year : RainGenerator.years(RAIN, WET)) {
      for (int d = 0; d < 31; d++) {
        wet += year[d] > 0 ? 1 : 0;
        if (d > 0 && year[d - 1] > 0) {
          before++;
          wetAfterWet += year[d] > 0 ? 1 : 0;
        }
      }
    }
    assertEquals(18, (double) wet / RainGenerator.YEARS, 2);
    assertEquals(0.685, (double) wetAfterWet / before, 0.06);
  }

  @Test
  void sameNormals_giveTheSameDays_andDryMonthsNone() {
    double[] rain = RAIN.clone();
    double[] wet = WET.clone();
    rain[6] = 0;
    wet[6] = 0;
    List<double[]> first = RainGenerator.years(rain, wet);
    List<double[]> second = RainGenerator.years(rain, wet);
    for (int y = 0; y < RainGenerator.YEARS; y++) {
      assertArrayEquals(first.get(y), second.get(y));
      for (int d = 181; d < 212; d++) {
        assertEquals(0, first.get(y)[d], "July");
      }
    }
  }

  @Test
  void years_differ() {
    List<double[]> years = RainGenerator.years(RAIN, WET);
    double[] sums =
        years.stream().mapToDouble(y -> java.util.Arrays.stream(y).sum()).sorted().toArray();
    assertTrue(sums[29] > 1.15 * sums[0], sums[0] + " to " + sums[29]);
  }

  /** Points (0, 0), (1, 6), (2, 9), (4, 10): above the line by 0.35, 0.40 and 0: the third. */
  @Test
  void knee_liesFarthestAboveTheChord() {
    assertEquals(2, Knee.of(List.of(0.0, 1.0, 2.0, 4.0), List.of(0.0, 6.0, 9.0, 10.0)));
    assertEquals(0, Knee.of(List.of(1.0, 2.0), List.of(5.0, 5.0)));
  }

  /** The same curve far from the origin, (10, 5) to (50, 55): 0.72 − 0.25 above the chord first. */
  @Test
  void knee_isTheSameWhereverTheCurveBegins() {
    assertEquals(1, Knee.of(List.of(10.0, 20.0, 30.0, 50.0), List.of(5.0, 41.0, 50.0, 55.0)));
    // 0.6 − 0.25 and 0.9 − 0.5.
    assertEquals(2, Knee.of(List.of(10.0, 20.0, 30.0, 50.0), List.of(5.0, 35.0, 50.0, 55.0)));
    // As far above, 0.25: the first. Below the chord all along: none but the beginning.
    assertEquals(1, Knee.of(List.of(0.0, 1.0, 2.0, 4.0), List.of(0.0, 5.0, 7.5, 10.0)));
    assertEquals(0, Knee.of(List.of(0.0, 1.0, 2.0, 4.0), List.of(0.0, 1.0, 2.0, 10.0)));
  }

  /** Every day wet, each month with the same mean. */
  private static double[] daysOfMean(double mm) {
    double[] wet = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    double[] rain = java.util.Arrays.stream(wet).map(days -> days * mm).toArray();
    return RainGenerator.years(rain, wet).stream()
        .flatMapToDouble(java.util.Arrays::stream)
        .sorted()
        .toArray();
  }

  /** The largest step between what was drawn and a distribution (Kolmogorov and Smirnov). */
  private static double apart(double[] sorted, DoubleUnaryOperator below) {
    double most = 0;
    for (int i = 0; i < sorted.length; i++) {
      double share = below.applyAsDouble(sorted[i]);
      most =
          Math.max(
              most,
              Math.max(share - (double) i / sorted.length, (i + 1.0) / sorted.length - share));
    }
    return most;
  }

  /**
   * At a mean of 2 mm, −2.16 + 1.83 × 2 is less than the mean: an exponential distribution. Of
   * 10,950 true draws one sample in a hundred is farther off than 1.63 / √10,950 = 0.0156.
   */
  @Test
  void smallRains_areExponential() {
    assertEquals(0, apart(daysOfMean(2), mm -> 1 - Math.exp(-mm / 2)), 0.0156);
  }

  /**
   * At a mean of 2.16 / (1.83 − 1 / 0.64) = 8.0748 mm the scale is 1 / 0.64 of it, so the shape
   * 0.64. Γ(1.64) = 0.8986420 (Abramowitz and Stegun, Table 6.1); the share below x is x^a e^−x /
   * Γ(a + 1) × (1 + x / (a + 1) + x² / (a + 1)(a + 2) + …) (their 6.5.29).
   */
  @Test
  void largerRains_areGammaOfTheirShape() {
    double mean = 2.16 / (1.83 - 1 / 0.64);
    assertEquals(0, apart(daysOfMean(mean), mm -> gammaBelow(mm / (mean / 0.64))), 0.0156);
  }

  private static double gammaBelow(double x) {
    double sum = 0;
    double term = 1;
    for (int n = 1; n < 400; n++) {
      sum += term;
      term *= x / (0.64 + n);
    }
    return x <= 0 ? 0 : Math.pow(x, 0.64) * Math.exp(-x) / 0.8986420 * sum;
  }
}
