package yardloom.planting.care.formula;

import java.time.LocalDate;

/**
 * The part of a stretch of days that falls into each month.
 *
 * <p>References: plain counting of days, both ends included.
 */
public final class MonthShares {
  private MonthShares() {}

  /** Twelve shares, January to December, that add up to 1. */
  public static double[] of(LocalDate from, LocalDate until) {
    double[] shares = new double[12];
    long days = until.toEpochDay() - from.toEpochDay() + 1;
    for (LocalDate day = from; !day.isAfter(until); day = day.plusDays(1)) {
      shares[day.getMonthValue() - 1] += 1.0 / days;
    }
    return shares;
  }
}
