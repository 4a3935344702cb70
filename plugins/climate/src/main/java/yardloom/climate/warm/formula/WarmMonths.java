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
    MonthDay middle = MonthDay.of(month + 1, MIDDLE);
    return new Edge(middle, month, middle, 0);
  }

  /** The first whole day past the limit on the way up, the last one on the way down. */
  private static Edge crossing(int month, List<Double> meansC, double limitC, boolean up) {
    LocalDate middle = LocalDate.of(YEAR, month + 1, MIDDLE);
    long days = middle.plusMonths(1).toEpochDay() - middle.toEpochDay();
    double from = meansC.get(month);
    double share = (limitC - from) / (meansC.get(after(month)) - from);
    double at = days * share;
    LocalDate day = middle.plusDays((long) (up ? Math.ceil(at) : Math.floor(at)));
    return new Edge(MonthDay.from(day), month, MonthDay.from(middle), (int) days);
  }
}
