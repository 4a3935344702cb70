package yardloom.climate.warm.formula;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;

/**
 * The stretch of the year in which the mean is at or above a limit, by straight lines between the
 * middles of the months; on either side of the equator. Where all months are warmer, the coldest
 * one parts the years: it begins a month after its middle and ends a month before it. Empty where
 * no month reaches the limit.
 *
 * <p>References: plain interpolation; own construction where all months are warm.
 */
public final class WarmMonths {
  private static final int MONTHS = 12;

  /** A year without a leap day. */
  private static final int YEAR = 2021;

  private static final int MIDDLE = 15;

  private WarmMonths() {}

  /** First and last day. */
  public record Stretch(MonthDay from, MonthDay until) {}

  /**
   * @param meansC of the twelve months, January first
   * @param limitC what counts as warm
   */
  public static Optional<Stretch> of(List<Double> meansC, double limitC) {
    int coldest = 0;
    int warmest = 0;
    for (int m = 1; m < MONTHS; m++) {
      coldest = meansC.get(m) < meansC.get(coldest) ? m : coldest;
      warmest = meansC.get(m) > meansC.get(warmest) ? m : warmest;
    }
    if (meansC.get(warmest) < limitC) {
      return Optional.empty();
    }
    if (meansC.get(coldest) >= limitC) {
      LocalDate middle = LocalDate.of(YEAR, coldest + 1, MIDDLE);
      return Optional.of(
          new Stretch(MonthDay.from(middle.plusMonths(1)), MonthDay.from(middle.minusMonths(1))));
    }
    // From the warmest month outward, so that a warm spell of winter is none of its own.
    int first = warmest;
    while (meansC.get(before(first)) >= limitC) {
      first = before(first);
    }
    int last = warmest;
    while (meansC.get(after(last)) >= limitC) {
      last = after(last);
    }
    return Optional.of(
        new Stretch(
            crossing(before(first), meansC, limitC, true), crossing(last, meansC, limitC, false)));
  }

  private static int before(int month) {
    return (month + MONTHS - 1) % MONTHS;
  }

  private static int after(int month) {
    return (month + 1) % MONTHS;
  }

  /** The first whole day past the limit on the way up, the last one on the way down. */
  private static MonthDay crossing(int month, List<Double> meansC, double limitC, boolean up) {
    LocalDate middle = LocalDate.of(YEAR, month + 1, MIDDLE);
    long days = middle.plusMonths(1).toEpochDay() - middle.toEpochDay();
    double from = meansC.get(month);
    double share = (limitC - from) / (meansC.get(after(month)) - from);
    double at = days * share;
    return MonthDay.from(middle.plusDays((long) (up ? Math.ceil(at) : Math.floor(at))));
  }
}
