package yardloom.water.lawn.formula;

import java.util.List;
import java.util.stream.IntStream;
import yardloom.kernel.unit.Temperature;

/**
 * The crop coefficients of turf through a year: {@code initial} in the month in which it starts to
 * grow, {@code end} in its last, {@code middle} in between, and 0 while it is dormant. Where it
 * never stops, {@code middle} all year.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, Table 12 (the three values). That turf sleeps below a monthly mean of 5
 * °C (41 °F), warm-season grass below 10 °C (50 °F), is common practice, no source.
 *
 * @param growsFrom least mean temperature of a month in which it grows
 */
public record TurfYear(double initial, double middle, double end, Temperature growsFrom) {
  /**
   * January to December.
   *
   * @param means mean temperatures of the twelve months
   */
  public List<Double> monthly(List<Temperature> means) {
    if (means.size() != 12) {
      throw new IllegalArgumentException("12 monthly means needed, got " + means.size());
    }
    return IntStream.range(0, 12)
        .mapToObj(m -> at(grows(means, m - 1), grows(means, m), grows(means, m + 1)))
        .toList();
  }

  private double at(boolean before, boolean now, boolean after) {
    if (!now) {
      return 0;
    }
    if (!before) {
      return initial;
    }
    return after ? middle : end;
  }

  private boolean grows(List<Temperature> means, int month) {
    return means.get((month + 12) % 12).compareTo(growsFrom) >= 0;
  }
}
