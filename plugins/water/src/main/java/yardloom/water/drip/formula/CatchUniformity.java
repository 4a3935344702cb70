package yardloom.water.drip.formula;

import java.util.Arrays;

/**
 * How even measured depths or outlet flows are.
 *
 * <p>Made for at least 24 readings, their number a multiple of four; other numbers of four or more
 * work with the quarter rounded down. All measures are 1 for equal readings.
 *
 * <p>References: [1] UC Davis California Center for Urban Horticulture, Measuring Distribution
 * Uniformity and Calculating Run Time (procedure of the low quarter). Christiansen's coefficient
 * and the coefficient of variation are textbook statistics.
 */
public final class CatchUniformity {
  private final double[] sorted;
  private final double mean;

  private CatchUniformity(double[] sorted) {
    this.sorted = sorted;
    mean = Arrays.stream(sorted).average().orElseThrow();
  }

  /**
   * Takes readings of one unit.
   *
   * @throws IllegalArgumentException for fewer than four, negative ones, or none above 0
   */
  public static CatchUniformity of(double... readings) {
    double[] sorted = readings.clone();
    Arrays.sort(sorted);
    if (sorted.length < 4 || !(sorted[0] >= 0) || sorted[sorted.length - 1] <= 0) {
      throw new IllegalArgumentException("at least four readings, none negative, some above 0");
    }
    return new CatchUniformity(sorted);
  }

  public double mean() {
    return mean;
  }

  /** Mean of the lowest quarter over the mean. */
  public double lowQuarter() {
    return lowMean(sorted.length / 4) / mean;
  }

  /** Mean of the lower half over the mean. */
  public double lowHalf() {
    return lowMean(sorted.length / 2) / mean;
  }

  /** Christiansen's coefficient: 1 less the mean deviation over the mean. */
  public double christiansen() {
    double deviation = Arrays.stream(sorted).map(r -> Math.abs(r - mean)).sum();
    return 1 - deviation / (sorted.length * mean);
  }

  /** Standard deviation of the sample over the mean. */
  public double variation() {
    double squares = Arrays.stream(sorted).map(r -> (r - mean) * (r - mean)).sum();
    return Math.sqrt(squares / (sorted.length - 1)) / mean;
  }

  private double lowMean(int count) {
    return Arrays.stream(sorted, 0, count).average().orElseThrow();
  }
}
