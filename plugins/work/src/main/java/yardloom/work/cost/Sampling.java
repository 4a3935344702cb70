package yardloom.work.cost;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import yardloom.facts.region.Spread;
import yardloom.kernel.source.Source;

/**
 * The spread of a result whose inputs are known as low, likely and high.
 *
 * <p>Each input is drawn from the triangular distribution over its three values, independently, in
 * Latin hypercube samples: every one of the {@link #SAMPLES} equal slices of each input is drawn
 * once, in an order shuffled by a fixed seed. The same inputs give the same result on every
 * machine. An input of no width keeps its value. Percentiles interpolate between ordered samples.
 *
 * <p>References: [1] M. D. McKay, R. J. Beckman, W. J. Conover, A comparison of three methods for
 * selecting values of input variables, Technometrics 21, 1979, pp. 239-245 (from memory).
 */
public final class Sampling {
  /** Draws of each input. */
  public static final int SAMPLES = 2000;

  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.memory(
          "Latin hypercube sampling of triangular distributions",
          "M. D. McKay, R. J. Beckman and W. J. Conover, Technometrics 21",
          1979,
          "pp. 239-245");

  private static final long SEED = 20_110_801L;

  /** All inputs of each draw. */
  private final double[][] draws;

  /** Draws all inputs. */
  public Sampling(List<Spread> inputs) {
    SplittableRandom random = new SplittableRandom(SEED);
    draws = new double[SAMPLES][inputs.size()];
    for (int d = 0; d < inputs.size(); d++) {
      int[] slices = shuffled(random);
      for (int i = 0; i < SAMPLES; i++) {
        draws[i][d] = quantile(inputs.get(d), (slices[i] + random.nextDouble()) / SAMPLES);
      }
    }
  }

  private static int[] shuffled(SplittableRandom random) {
    int[] order = new int[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      int j = random.nextInt(i + 1);
      order[i] = order[j];
      order[j] = i;
    }
    return order;
  }

  /** The triangular distribution's quantile for {@code share}, 0 to 1. */
  public static double quantile(Spread s, double share) {
    double width = s.high() - s.low();
    if (width == 0) {
      return s.likely();
    }
    double atLikely = (s.likely() - s.low()) / width;
    return share <= atLikely
        ? s.low() + Math.sqrt(share * width * (s.likely() - s.low()))
        : s.high() - Math.sqrt((1 - share) * width * (s.high() - s.likely()));
  }

  /**
   * Percentiles of a result.
   *
   * @param p10 a tenth of the samples lie below
   */
  public record Percentiles(double p10, double p50, double p90) {}

  /**
   * The percentiles of {@code result}, given all inputs of one draw in their order, which it leaves
   * as they are.
   */
  public Percentiles of(ToDoubleFunction<double[]> result) {
    double[] values = new double[SAMPLES];
    for (int i = 0; i < SAMPLES; i++) {
      values[i] = result.applyAsDouble(draws[i]);
    }
    Arrays.sort(values);
    return new Percentiles(at(values, 0.1), at(values, 0.5), at(values, 0.9));
  }

  private static double at(double[] sorted, double share) {
    double rank = share * (sorted.length - 1);
    int below = (int) Math.floor(rank);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
  }
}
