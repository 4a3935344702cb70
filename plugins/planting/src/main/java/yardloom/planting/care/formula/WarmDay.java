package yardloom.planting.care.formula;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.unit.Months;

/**
 * The first day of spring on which the mean temperature passes 10 °C (50 °F), by straight lines
 * between the middles of the months; empty where all months are warmer, or none is.
 *
 * <p>References: 50 °F as the base of growth of apples and other deciduous fruit is common
 * practice.
 */
public final class WarmDay {
  private static final double WARM_C = 10;

  private WarmDay() {}

  /**
   * @param meansC of the twelve months, January first
   */
  public static Optional<MonthDay> of(List<Double> meansC) {
    for (int m = 0; m < 12; m++) {
      double from = meansC.get(m);
      double to = meansC.get((m + 1) % 12);
      if (from < WARM_C && to >= WARM_C) {
        int days = (int) Math.ceil(Months.daysToPass(m, from, to, WARM_C));
        return Optional.of(Months.afterMiddle(m, days));
      }
    }
    return Optional.empty();
  }
}
