package yardloom.climate.frost.formula;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Freeze dates of many years and the share of years that have passed each.
 *
 * <p>A percentile of spring dates is the day by which the last freeze had come in that share of
 * years; a percentile of fall dates the day by which the first freeze had come. In a year without a
 * freeze in spring the last one counts as before all dates, without one in fall the first as after
 * all; where a percentile falls on such years there is no date. Between years the day is
 * interpolated and rounded to the later one in spring, the earlier one in fall, which errs on the
 * safe side. References: [1] Midwestern Regional Climate Center, Freeze Date Tool: early and late
 * dates are the 10th and 90th percentile of the period's dates; [2] National Climatic Data Center,
 * freeze probabilities: 90 percent at a spring day means that 9 of 10 years freeze after it.
 */
public final class FreezeRecord {
  private static final int LEAP = 2020;

  private final boolean south;
  private final double[] spring;
  private final double[] fall;

  /**
   * A record.
   *
   * @param years complete frost years, at least one
   */
  public FreezeRecord(
      SortedMap<LocalDate, Double> minimumC, List<Integer> years, boolean south, double limitC) {
    if (years.isEmpty()) {
      throw new IllegalArgumentException("freeze dates need at least one year");
    }
    this.south = south;
    List<Freezes.Dates> dates =
        years.stream().map(y -> Freezes.of(minimumC, y, south, limitC)).toList();
    spring = days(dates.stream().map(Freezes.Dates::lastOfSpring).toList(), -1e6);
    fall = days(dates.stream().map(Freezes.Dates::firstOfFall).toList(), 1e6);
  }

  /** Days since the start of a leap frost year, in order. */
  private double[] days(List<Optional<LocalDate>> dates, double without) {
    return dates.stream()
        .mapToDouble(d -> d.map(x -> (double) day(MonthDay.from(x))).orElse(without))
        .sorted()
        .toArray();
  }

  private long day(MonthDay day) {
    LocalDate start = leapStart();
    LocalDate at = day.atYear(start.getYear());
    return ChronoUnit.DAYS.between(start, at.isBefore(start) ? day.atYear(LEAP) : at);
  }

  /** A frost year that holds a 29 February. */
  private LocalDate leapStart() {
    return Freezes.start(south ? LEAP - 1 : LEAP, south);
  }

  /** The spring day by which a share of years, 0 to 1, have had their last freeze. */
  public Optional<MonthDay> lastOfSpring(double share) {
    return date(Math.ceil(percentile(spring, share) - 1e-9));
  }

  /** The fall day by which a share of years, 0 to 1, have had their first freeze. */
  public Optional<MonthDay> firstOfFall(double share) {
    return date(Math.floor(percentile(fall, share) + 1e-9));
  }

  private Optional<MonthDay> date(double day) {
    boolean inYear = day >= 0 && day < 366;
    return inYear ? Optional.of(MonthDay.from(leapStart().plusDays((long) day))) : Optional.empty();
  }

  /** Linear between the sorted values, the least at 0 and the greatest at 1. */
  private static double percentile(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) Math.floor(at);
    double part = at - below;
    return part == 0 ? sorted[below] : sorted[below] * (1 - part) + sorted[below + 1] * part;
  }
}
