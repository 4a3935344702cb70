package yardloom.sun.position;

import java.time.ZonedDateTime;

/**
 * The sun's passage over one place on one civil day: the passage whose highest point is nearest to
 * noon of the day's clock. Sunrise and sunset are those of this passage, so far north a sunset may
 * fall after midnight; its date says so.
 */
public sealed interface DayEvents {
  /** When the sun stands on the meridian. */
  ZonedDateTime transit();

  /** An ordinary day. */
  record RiseAndSet(ZonedDateTime sunrise, ZonedDateTime transit, ZonedDateTime sunset)
      implements DayEvents {}

  /** The first day of polar day: the sun rises and stays up through the following midnight. */
  record RiseOnly(ZonedDateTime sunrise, ZonedDateTime transit) implements DayEvents {}

  /** The last day of polar day: the sun was up at the midnight before and sets. */
  record SetOnly(ZonedDateTime transit, ZonedDateTime sunset) implements DayEvents {}

  /** The sun stays up from the midnight before to the midnight after. */
  record PolarDay(ZonedDateTime transit) implements DayEvents {}

  /** The sun stays down even at its highest. */
  record PolarNight(ZonedDateTime transit) implements DayEvents {}
}
