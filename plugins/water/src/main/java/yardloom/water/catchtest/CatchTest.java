package yardloom.water.catchtest;

import java.util.List;
import yardloom.kernel.plan.AttributeKey;

/**
 * Readings of outlets or cups, in one unit.
 *
 * @param zone what was measured, in words
 */
public record CatchTest(String zone, List<Double> readings) {
  /** Tests of a plan. */
  public static final AttributeKey<CatchTest> KEY =
      new AttributeKey<>("water.catch-test", CatchTest.class);

  public CatchTest {
    readings = List.copyOf(readings);
  }

  double[] values() {
    return readings.stream().mapToDouble(r -> r).toArray();
  }
}
