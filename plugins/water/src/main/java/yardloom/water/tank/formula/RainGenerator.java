package yardloom.water.tank.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import yardloom.kernel.unit.Months;

/**
 * Daily rain made from monthly normals, always the same for the same normals: wet and dry days by a
 * Markov chain of two states, amounts of wet days by a gamma distribution.
 *
 * <p>With f the share of wet days of a month: a wet day follows a dry one with 0.75 f, a wet one
 * with 0.25 + 0.75 f. The scale of the amounts is −2.16 + 1.83 × their mean in mm; where that is
 * less than the mean, the mean (an exponential distribution). Each calendar month is then scaled so
 * that its mean over all years is the normal. Years have 365 days. Wet spells last days, not weeks:
 * the driest years of a real place are drier.
 *
 * <p>References: [1] C. W. Richardson, D. A. Wright, WGEN, USDA ARS-8, 1984 (two-state chain and
 * gamma amounts). [2] S. Geng, F. W. T. Penning de Vries, I. Supit, A simple method for generating
 * daily rainfall data, Agricultural and Forest Meteorology 36, 1986 (the constants; from memory).
 * [3] G. Marsaglia, W. W. Tsang, A simple method for generating gamma variables, ACM Transactions
 * on Mathematical Software 26, 2000 (from memory).
 */
public final class RainGenerator {
  /** Years that are made. */
  public static final int YEARS = 30;

  private static final long SEED = 19_860_401L;

  private final SplittableRandom random = new SplittableRandom(SEED);
  private double spare = Double.NaN;

  private RainGenerator() {}

  /**
   * Days of rain in mm, year by year from 1 January.
   *
   * @param rainMm normals of twelve months
   * @param wetDays of the same months; above 0 where there is rain
   */
  public static List<double[]> years(double[] rainMm, double[] wetDays) {
    RainGenerator generator = new RainGenerator();
    List<double[]> years = new ArrayList<>();
    boolean isWet = false;
    for (int y = 0; y < YEARS; y++) {
      double[] year = new double[365];
      int day = 0;
      for (int m = 0; m < 12; m++) {
        for (int d = 0; d < Months.days(m); d++, day++) {
          isWet = generator.isWet(isWet, Math.min(1, wetDays[m] / Months.days(m)));
          year[day] = isWet ? generator.amount(rainMm[m] / wetDays[m]) : 0;
        }
      }
      years.add(year);
    }
    scale(years, rainMm);
    return years;
  }

  private boolean isWet(boolean before, double share) {
    double chance = 0.75 * share + (before ? 0.25 : 0);
    return share > 0 && random.nextDouble() < chance;
  }

  private double amount(double mean) {
    double scale = Math.max(mean, -2.16 + 1.83 * mean);
    return scale * gamma(mean / scale);
  }

  /** For shapes up to 1: the draw for a shape one greater, times a power of an even draw. */
  private double gamma(double shape) {
    double d = shape + 1 - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double x = normal();
      double v = 1 + c * x;
      double u = random.nextDouble();
      if (v > 0) {
        double cube = v * v * v;
        if (StrictMath.log(u) < 0.5 * x * x + d - d * cube + d * StrictMath.log(cube)) {
          return d * cube * StrictMath.pow(random.nextDouble(), 1 / shape);
        }
      }
    }
  }

  /** The polar method of Box, Muller and Marsaglia. */
  private double normal() {
    if (!Double.isNaN(spare)) {
      double kept = spare;
      spare = Double.NaN;
      return kept;
    }
    double x;
    double y;
    double s;
    do {
      x = 2 * random.nextDouble() - 1;
      y = 2 * random.nextDouble() - 1;
      s = x * x + y * y;
    } while (s >= 1 || s == 0);
    double factor = Math.sqrt(-2 * StrictMath.log(s) / s);
    spare = y * factor;
    return x * factor;
  }

  private static void scale(List<double[]> years, double[] rainMm) {
    int from = 0;
    for (int m = 0; m < 12; m++) {
      int until = from + Months.days(m);
      double sum = 0;
      for (double[] year : years) {
        for (int d = from; d < until; d++) {
          sum += year[d];
        }
      }
      double factor = sum > 0 ? rainMm[m] * YEARS / sum : 0;
      for (double[] year : years) {
        for (int d = from; d < until; d++) {
          year[d] *= factor;
        }
      }
      from = until;
    }
  }
}
