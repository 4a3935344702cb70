package yardloom.sun.position;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;

/**
 * Where the sun stands, by the Solar Position Algorithm (±0.0003° between the years -2000 and
 * 6000).
 *
 * <p>Angles in degrees: azimuth clockwise from true north, elevation above the level horizon,
 * latitude north positive, longitude east positive. {@link #geometric} is the sun's centre without
 * refraction, which is what counts as direct sun; {@link #apparent} is where it is seen.
 *
 * <p>References: [1] I. Reda, A. Andreas, Solar Position Algorithm for Solar Radiation
 * Applications, NREL/TP-560-34302, rev. 2008; as implemented by the library solarpositioning.
 */
public final class SolarPositions {
  private static final long DAY_MILLIS = 86_400_000;

  private SolarPositions() {}

  private static SPA.SpaTimeDependent timeParts(Instant at) {
    ZonedDateTime utc = at.atZone(ZoneOffset.UTC);
    return SPA.calculateSpaTimeDependentParts(utc, DeltaT.estimate(utc.toLocalDate()));
  }

  /** The elevation of the sun's centre from geocentric declination and hour angle. */
  static double geocentricElevationDeg(Instant at, double latitudeDeg, double longitudeDeg) {
    SPA.SpaTimeDependent parts = timeParts(at);
    return StrictMath.toDegrees(
        DayLength.elevation(
            StrictMath.toRadians(latitudeDeg),
            StrictMath.toRadians(parts.deltaDegrees()),
            StrictMath.toRadians(parts.nuDegrees() + longitudeDeg - parts.alphaDegrees())));
  }

  /** The sun's geocentric declination. */
  public static double declinationDeg(Instant at) {
    return timeParts(at).deltaDegrees();
  }

  /**
   * The instant at which the sun crosses the meridian nearest to {@code about}, to a second.
   *
   * <p>Two steps of the equation of time suffice, since it changes by at most 30 s a day.
   */
  public static Instant transitNear(Instant about, double longitudeDeg) {
    Instant at = about;
    for (int i = 0; i < 3; i++) {
      SPA.SpaTimeDependent parts = timeParts(at);
      double hourAngleDeg =
          StrictMath.IEEEremainder(parts.nuDegrees() + longitudeDeg - parts.alphaDegrees(), 360);
      // The sun's hour angle grows by 360° in a solar day.
      at = at.minusMillis(StrictMath.round(hourAngleDeg / 360 * DAY_MILLIS));
    }
    return at;
  }
}
