package yardloom.work.phase;

import yardloom.work.labour.WorkSettings;

/**
 * How the hours of one crew fill its days. A point of time is a number of working days since the
 * first morning: 2.25 is the third day after a quarter of its hours.
 *
 * <p>The next phase begins when the one before it ends, within the same day. It waits for the
 * morning where less than half an hour of the day is left and that is not enough, and where a truck
 * must come for it in the last quarter of the day; what would be left for less than half an hour of
 * the next day is done in the evening before (common practice: nobody begins, is delivered to or
 * comes again for that). Hours are zero or more.
 *
 * <p>References: arithmetic; no publication is needed.
 */
public final class CrewDays {
  private static final double TINY = 1e-9;
  private static final double HALF_AN_HOUR = 0.5;

  /** The share of a day after which no truck comes any more. */
  public static final double LATE = 0.75;

  private final WorkSettings work;

  CrewDays(WorkSettings work) {
    this.work = work;
  }

  /** Working days that the crew takes for hours of one person. */
  double of(double hours) {
    return hours / (work.crew() * work.hoursPerDay());
  }

  /** Days on which the crew comes for hours that begin in a morning, one at least. */
  int whole(double hours) {
    return Math.max(1, (int) evening(end(0, hours, 0)));
  }

  /** When a phase begins that may begin at {@code free}. */
  double begin(double free, double hours, boolean byTruck) {
    double gone = free - morning(free);
    double left = (1 - gone) * work.hoursPerDay();
    boolean isShort = gone + of(hours) > 1 + TINY && left < HALF_AN_HOUR;
    return gone > 0 && (isShort || byTruck && gone > LATE) ? morning(free) + 1 : free;
  }

  /**
   * When it ends: with its hours, up to half an hour after the usual end of a day, and where it
   * takes more days than these need, so many whole days later, such as concrete that sets.
   */
  double end(double begin, double hours, int leastDays) {
    double end = begin + of(hours);
    double over = (end - morning(end)) * work.hoursPerDay();
    if (morning(end) > morning(begin) && over < HALF_AN_HOUR) {
      end = morning(end);
    }
    int more = leastDays - work.daysFor(hours);
    return more > 0 ? Math.max(evening(end), morning(begin) + 1) + more : end;
  }

  /** The morning of the day that holds a point of time. */
  static double morning(double at) {
    return Math.floor(at + TINY);
  }

  /** The end of the day of which hours are worked until {@code at}; a morning is an end itself. */
  static double evening(double at) {
    return Math.ceil(at - TINY);
  }
}
