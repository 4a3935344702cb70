package yardloom.facts.region;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * A number of which only low, likely and high are known.
 *
 * @param cause why it spreads
 */
public record Spread(double low, double likely, double high, String cause, Source source) {
  /** The most that a rate or price may be: beyond it sums would lose their cents. */
  public static final double MOST = 1e9;

  public Spread {
    if (!(low <= likely && likely <= high)) {
      throw new IllegalArgumentException(
          "low, likely and high must rise, got " + low + ", " + likely + ", " + high);
    }
  }

  /**
   * As a word gives it; low and high not given are as the likely one.
   *
   * @param least what low must be more than; below zero lets it be nothing
   * @throws PlanException (OUT_OF_RANGE) if the three do not rise or exceed {@link #MOST}
   */
  public static Spread given(
      Number low, Number likely, Number high, double least, String cause, Source source) {
    double l = (low == null ? likely : low).doubleValue();
    double m = likely.doubleValue();
    double h = (high == null ? likely : high).doubleValue();
    if (!(l <= m && m <= h) || !(l > least) || !(h <= MOST)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a rate rises from low to likely to high and is more than 0 (a price may be 0), up to a"
              + " thousand million; got "
              + l
              + ", "
              + m
              + ", "
              + h);
    }
    return new Spread(l, m, h, cause, source);
  }

  /** In a unit of which {@code factor} make one of this. */
  public Spread times(double factor) {
    return new Spread(low * factor, likely * factor, high * factor, cause, source);
  }
}
