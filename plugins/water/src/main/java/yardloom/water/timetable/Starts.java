package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import yardloom.facts.Sunrises;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.timetable.formula.TurnAbout;

/**
 * Starts by the clock: all is over ten minutes before sunrise, and nothing begins before the
 * evening where the night is long enough (both common practice).
 */
final class Starts {
  private static final int BEFORE_SUNRISE_MINUTES = 10;
  private static final LocalTime EVENING = LocalTime.of(18, 0);
  private static final int DAY_MINUTES = 24 * 60;

  private Starts() {}

  /** The earliest sunrise of a month, 0 (January) to 11. */
  static Optional<LocalTime> sunrise(Facts in, int month) {
    return in.find(YardFacts.SUNRISES).flatMap((Sunrises s) -> s.earliest().get(month));
  }

  /** How tables show a start; blank where it is not known. */
  static Cell cell(Optional<LocalTime> start) {
    return start.isEmpty() ? Cell.BLANK : Cell.text(text(start));
  }

  /** The same in words; empty where it is not known. */
  static String text(Optional<LocalTime> start) {
    return start.map(t -> String.format(Locale.ROOT, "%tR", t)).orElse("");
  }

  /** Minutes from the evening to the last end. */
  static int room(LocalTime sunrise) {
    int minutes = (sunrise.toSecondOfDay() - EVENING.toSecondOfDay()) / 60;
    return Math.floorMod(minutes, DAY_MINUTES) - BEFORE_SUNRISE_MINUTES;
  }

  /**
   * Minutes before the last end at which a watering starts that is over {@code end} minutes before
   * it: in steps of the clock.
   */
  static int before(LocalTime sunrise, double end, TimeSpan elapsed) {
    int minutes = (int) Math.ceil(end + elapsed.minutes());
    return minutes + at(sunrise, minutes).getMinute() % TurnAbout.CLOCK_STEP;
  }

  /** The clock so many minutes before the last end. */
  static LocalTime at(LocalTime sunrise, int minutes) {
    return sunrise.minusMinutes((long) BEFORE_SUNRISE_MINUTES + minutes).withSecond(0).withNano(0);
  }
}
