package yardloom.water.timetable.formula;

import yardloom.kernel.unit.TimeSpan;

/**
 * What is keyed into a timer for one month: every so many days, so many turns of whole minutes.
 *
 * <p>As seldom as the soil allows; oftener where whole minutes would miss the need by more than a
 * twentieth, and less often where a watering would be too short to fill the tubes.
 *
 * <p>References: common practice, no source.
 *
 * @param everyDays 1 or more
 * @param turns on such a day
 * @param turnMinutes of each
 */
public record TimerProgram(int everyDays, int turns, int turnMinutes) {
  /** Shorter waterings hardly fill the tubes. */
  public static final int LEAST_MINUTES = 10;

  private static final double TOLERANCE = 0.05;

  /** Turns more than are needed, where that makes the minutes whole. */
  private static final int MORE_TURNS = 3;

  /**
   * The program.
   *
   * @param minutes that the month needs, at least {@link #LEAST_MINUTES}
   * @param days of the month
   * @param mostApart days between waterings that the soil allows, 1 or more
   * @param longestTurn minutes, above 0; infinite where the soil keeps up
   */
  public static TimerProgram of(double minutes, int days, int mostApart, double longestTurn) {
    TimerProgram best = null;
    for (int every = Math.min(mostApart, days); every >= 1; every--) {
      if (minutes * every / days >= LEAST_MINUTES) {
        best = better(best, at(every, minutes, days, longestTurn), minutes, days);
      }
    }
    for (int every = Math.min(mostApart, days) + 1; every <= days; every++) {
      boolean isLongEnough = minutes * every / days >= LEAST_MINUTES;
      if (isLongEnough && (best == null || best.miss(minutes, days) > TOLERANCE)) {
        best = better(best, at(every, minutes, days, longestTurn), minutes, days);
      }
    }
    return best;
  }

  private static TimerProgram better(TimerProgram one, TimerProgram other, double need, int days) {
    boolean isGood = one != null && one.miss(need, days) <= TOLERANCE;
    return one == null || !isGood && other.miss(need, days) < one.miss(need, days) ? other : one;
  }

  /** The fewest turns in which whole minutes come near enough. */
  private static TimerProgram at(int every, double minutes, int days, double longestTurn) {
    double day = minutes * every / days;
    int fewest = Math.max(1, (int) Math.ceil(day / longestTurn - 1e-9));
    TimerProgram best = null;
    for (int turns = fewest; turns <= fewest + MORE_TURNS; turns++) {
      int each = Math.max(1, (int) Math.round(day / turns));
      best = better(best, new TimerProgram(every, turns, each), minutes, days);
    }
    return best;
  }

  /** Minutes on a day of watering. */
  public int dayMinutes() {
    return turns * turnMinutes;
  }

  /** From the first turn's start to the last one's end, with such a wait between turns. */
  public TimeSpan elapsed(TimeSpan soak) {
    return TimeSpan.minutes(dayMinutes()).plus(soak.times(turns - 1));
  }

  /** Minutes in a month. */
  public double monthMinutes(int days) {
    return (double) dayMinutes() * days / everyDays;
  }

  private double miss(double minutes, int days) {
    return Math.abs(monthMinutes(days) / minutes - 1);
  }
}
