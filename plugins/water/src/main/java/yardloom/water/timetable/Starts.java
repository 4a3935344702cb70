package yardloom.water.timetable;

import java.time.LocalTime;
import yardloom.kernel.unit.TimeSpan;

/** Starts of zones that run one after the other, taken from the last one backwards. */
final class Starts {
  private static final double BEFORE_SUNRISE_MINUTES = 10;
  private static final int CLOCK_STEP = 5;

  private double minutes = BEFORE_SUNRISE_MINUTES;

  /** When the zone before those already asked for starts, in steps of five minutes. */
  LocalTime before(LocalTime sunrise, TimeSpan elapsed) {
    minutes += elapsed.minutes();
    LocalTime at = sunrise.minusMinutes((long) Math.ceil(minutes));
    int early = at.getMinute() % CLOCK_STEP;
    minutes += early;
    return at.withSecond(0).withNano(0).minusMinutes(early);
  }
}
