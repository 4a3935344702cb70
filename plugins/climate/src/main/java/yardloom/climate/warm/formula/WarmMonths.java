package yardloom.climate.warm.formula;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.unit.Months;

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

  private WarmMonths() {}

  /** First and last day. */
  public record Stretch(Edge from, Edge until) {}

  /**
   * A day on which the warm part of the year begins or ends.
   *
   * @param month in whose middle its straight line begins, 0 for January
   * @param middle of that month
   * @param daysOn to the middle of the next one; 0 where the day is the middle itself, of a year
   *     that is warm throughout
   */
  public record Edge(MonthDay day, int month, MonthDay middle, int daysOn) {}

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
      return Optional.of(new Stretch(middle(after(coldest)), middle(before(coldest))));
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

  private static Edge middle(int month) {
    MonthDay middle = Months.afterMiddle(month, 0);
    return new Edge(middle, month, middle, 0);
  }

  /** The first whole day past the limit on the way up, the last one on the way down. */
  private static Edge crossing(int month, List<Double> meansC, double limitC, boolean up) {
    double at = Months.daysToPass(month, meansC.get(month), meansC.get(after(month)), limitC);
    MonthDay day = Months.afterMiddle(month, (int) (up ? Math.ceil(at) : Math.floor(at)));
    return new Edge(day, month, Months.afterMiddle(month, 0), Months.days(month));
  }
}
