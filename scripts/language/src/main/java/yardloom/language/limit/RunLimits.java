package yardloom.language.limit;

import java.time.Duration;

/**
 * How much a script may use up.
 *
 * @param steps loop rounds, calls of helpers and closures, and items of lists that operators make
 * @param allocatedBytes memory asked for, counting what is thrown away again
 * @param time processor time from the start of reading to the end of running; by the clock it may
 *     take four times as long
 * @param depth how deep helpers and closures may call each other
 * @param elements elements a plan may hold
 * @param includeDepth how deep included files may include others
 */
public record RunLimits(
    long steps, long allocatedBytes, Duration time, int depth, int elements, int includeDepth) {
  public RunLimits {
    if (steps < 1 || allocatedBytes < 1 || time.isNegative() || depth < 1 || elements < 1) {
      throw new IllegalArgumentException("limits must be positive");
    }
  }

  /** Enough for any yard, small enough to notice a runaway script soon. */
  public static RunLimits standard() {
    return new RunLimits(5_000_000, 2L << 30, Duration.ofSeconds(30), 1_000, 5_000, 8);
  }
}
