package yardloom.water.timetable;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import yardloom.facts.Sunrises;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.table.Cell;
import yardloom.kernel.unit.TimeSpan;

/** Starts of zones that run one after the other, taken from the last one backwards. */
final class Starts {
  private static final double BEFORE_SUNRISE_MINUTES = 10;
  private static final int CLOCK_STEP = 5;

  private double minutes = BEFORE_SUNRISE_MINUTES;

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

  /** When the zone before those already asked for starts, in steps of five minutes. */
  LocalTime before(LocalTime sunrise, TimeSpan elapsed) {
    minutes += elapsed.minutes();
    LocalTime at = sunrise.minusMinutes((long) Math.ceil(minutes));
    int early = at.getMinute() % CLOCK_STEP;
    minutes += early;
    return at.withSecond(0).withNano(0).minusMinutes(early);
  }
}
