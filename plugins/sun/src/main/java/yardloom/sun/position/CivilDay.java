package yardloom.sun.position;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;

/**
 * Sunrise, meridian transit and sunset of a civil day, to a second.
 *
 * <p>Rise and set are found by halving between the meridian and the midnights of the same passage,
 * so they belong to the local day at every longitude. Methods that work on the UT day and wrap
 * times into it return the sunset of the evening before for places far west, such as 17:20:19 for
 * Golden, Colorado, on 17 October 2003, where the sun sets at 17:18:51.
 *
 * <p>Declination and hour angle are geocentric, as in published tables. References: see {@link
 * SolarPositions}.
 */
public final class CivilDay {
  private static final Duration HALF_DAY = Duration.ofHours(12);

  /** What counts as the moment of rising. */
  public enum Horizon {
    /** The upper limb on a level horizon through mean refraction: centre at -0.8333°. */
    UPPER_LIMB(-0.8333),
    /** The centre at 0° without refraction: what sun hours count. */
    CENTRE(0);

    private final double elevationDeg;

    Horizon(double elevationDeg) {
      this.elevationDeg = elevationDeg;
    }
  }

  private final double latitudeDeg;
  private final double longitudeDeg;
  private final double horizonDeg;

  public CivilDay(double latitudeDeg, double longitudeDeg, Horizon horizon) {
    this.latitudeDeg = latitudeDeg;
    this.longitudeDeg = longitudeDeg;
    horizonDeg = horizon.elevationDeg;
  }

  /** The events of a date by the clock of {@code zone}. */
  public DayEvents on(LocalDate date, ZoneId zone) {
    Instant noon = date.atTime(LocalTime.NOON).atZone(zone).toInstant();
    Instant transit = SolarPositions.transitNear(noon, longitudeDeg);
    Instant before = SolarPositions.transitNear(transit.minus(HALF_DAY), longitudeDeg + 180);
    Instant after = SolarPositions.transitNear(transit.plus(HALF_DAY), longitudeDeg + 180);
    ZonedDateTime top = clock(transit, zone);
    if (!isUp(transit)) {
      return new DayEvents.PolarNight(top);
    }
    boolean rises = !isUp(before);
    boolean sets = !isUp(after);
    if (rises && sets) {
      return new DayEvents.RiseAndSet(
          clock(change(before, transit), zone), top, clock(change(after, transit), zone));
    }
    if (rises) {
      return new DayEvents.RiseOnly(clock(change(before, transit), zone), top);
    }
    return sets
        ? new DayEvents.SetOnly(top, clock(change(after, transit), zone))
        : new DayEvents.PolarDay(top);
  }

  private static ZonedDateTime clock(Instant at, ZoneId zone) {
    return at.plusMillis(500).truncatedTo(ChronoUnit.SECONDS).atZone(zone);
  }

  private boolean isUp(Instant at) {
    return SolarPositions.geocentricElevationDeg(at, latitudeDeg, longitudeDeg) > horizonDeg;
  }

  /** The moment between a time with the sun down and one with it up. */
  private Instant change(Instant down, Instant up) {
    long from = down.toEpochMilli();
    long to = up.toEpochMilli();
    while (Math.abs(to - from) > 1) {
      long middle = (from + to) / 2;
      if (isUp(Instant.ofEpochMilli(middle))) {
        to = middle;
      } else {
        from = middle;
      }
    }
    return Instant.ofEpochMilli(to);
  }
}
