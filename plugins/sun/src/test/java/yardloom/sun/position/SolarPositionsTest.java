package yardloom.sun.position;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;

class SolarPositionsTest {
  private static final OutsideRows POSITIONS =
      OutsideRows.of(SolarPositionsTest.class, "positions.csv");
  private static final OutsideRows SEASONS =
      OutsideRows.of(SolarPositionsTest.class, "seasons.csv");
  private static final OutsideRows APPARENT_SUN =
      OutsideRows.of(SolarPositionsTest.class, "apparent-sun.csv");

  @ParameterizedTest(name = "{0} {1} at {2}, {3}")
  @CsvFileSource(resources = "positions.csv", numLinesToSkip = 1)
  void apparentPosition_equalsPublished(
      String id,
      String utc,
      double latitude,
      double longitude,
      double elevationM,
      double pressureHpa,
      double temperatureC,
      double azimuth,
      double azimuthTolerance,
      double elevation,
      double elevationTolerance,
      String source) {
    Instant at = Instant.parse(utc);
    double declination = Math.toRadians(SolarPositions.declinationDeg(at));
    double hourAngle = hourAngleRad(at, longitude);
    double phi = Math.toRadians(latitude);
    double found = Math.toDegrees(DayLength.elevation(phi, declination, hourAngle));
    double seen = found + refractionDeg(found, pressureHpa, temperatureC);
    double bearing = Math.toDegrees(DayLength.bearing(phi, declination, hourAngle));
    POSITIONS.check(
        id, "elevation", elevation, seen, Math.max(elevationTolerance, PARALLAX_DEG + SECOND_DEG));
    // A degree of bearing shrinks towards the zenith.
    assertEquals(
        0,
        Math.IEEEremainder(azimuth - bearing, 360) * Math.cos(Math.toRadians(found)),
        Math.max(azimuthTolerance, 0.005),
        id + " azimuth, " + source);
    POSITIONS.met(
        id,
        "azimuth",
        String.format(Locale.ROOT, "%.4f", bearing),
        Math.max(azimuthTolerance, 0.005) + " across");
  }

  /** The sun is seen from the ground, not from the middle of the earth: 8.794 seconds of arc. */
  private static final double PARALLAX_DEG = 8.794 / 3600;

  /** Transits are found to a second, in which the sun moves by 15 seconds of arc. */
  private static final double SECOND_DEG = 15.0 / 3600;

  /** From the transits before and after, as shade and clock times are worked out. */
  private static double hourAngleRad(Instant at, double longitude) {
    Instant near = SolarPositions.transitNear(at, longitude);
    Instant before = at.isBefore(near) ? transit(near, -1, longitude) : near;
    Instant after = transit(before, 1, longitude);
    double share =
        (at.toEpochMilli() - before.toEpochMilli())
            / (double) (after.toEpochMilli() - before.toEpochMilli());
    return 2 * Math.PI * share;
  }

  private static Instant transit(Instant from, int days, double longitude) {
    return SolarPositions.transitNear(from.plusSeconds(86_400L * days), longitude);
  }

  /** NREL/TP-560-34302, equation 42. */
  private static double refractionDeg(double elevation, double pressureHpa, double temperatureC) {
    return pressureHpa
        / 1010
        * 283
        / (273 + temperatureC)
        * 1.02
        / (60 * Math.tan(Math.toRadians(elevation + 10.3 / (elevation + 5.11))));
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "apparent-sun.csv", numLinesToSkip = 1)
  void declinationAndEquationOfTime_equalPublished(
      String id,
      String utc,
      double declination,
      double declinationTolerance,
      Double equationMinutes,
      Double equationTolerance,
      String source) {
    Instant at = Instant.parse(utc);
    APPARENT_SUN.check(
        id,
        utc + " declination",
        declination,
        SolarPositions.declinationDeg(at),
        declinationTolerance);
    if (equationMinutes != null) {
      // Where it is about noon: 15° further east for each hour before 12 h of Greenwich.
      double longitude = 180 - 15.0 * (at.getEpochSecond() % 86_400) / 3600;
      Instant noon = SolarPositions.transitNear(at, longitude);
      double meanNoon = 720 - 4 * longitude;
      double minutes = Math.IEEEremainder(noon.toEpochMilli() / 60_000.0 - meanNoon, 1440);
      APPARENT_SUN.check(
          id, utc + " equation of time", -equationMinutes, minutes, equationTolerance);
    }
  }

  @ParameterizedTest(name = "{0} {1}: longitude of the sun {2}")
  @CsvFileSource(resources = "seasons.csv", numLinesToSkip = 1)
  void seasonBegins_whenPublished(
      String id, String utc, double longitude, double toleranceMinutes, String source) {
    Instant at = Instant.parse(utc);
    double lambda =
        SPA.calculateSpaTimeDependentParts(
                at.atZone(ZoneOffset.UTC), DeltaT.estimate(at.atZone(ZoneOffset.UTC).toLocalDate()))
            .lambdaDegrees();
    // The sun moves 360° in 365.2422 days; near the solstices and equinoxes within 3 % of that.
    double offMinutes = Math.IEEEremainder(lambda - longitude, 360) * 365.2422 * 1440 / 360;
    SEASONS.check(id, utc + " minutes off", 0, offMinutes, toleranceMinutes);
  }

  /** commons-suncalc, a second library with other series: both agree to 0.1°. */
  @Property(tries = 500, seed = "20261125")
  void geometricPosition_agreesWithSecondLibrary(
      @ForAll @DoubleRange(min = -66, max = 66) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude,
      @ForAll @LongRange(min = 0, max = 1_577_836_800L) long seconds) {
    Instant at = Instant.parse("2000-01-01T00:00:00Z").plusSeconds(seconds);
    LibraryPositions.Place ours = LibraryPositions.geometric(at, latitude, longitude);
    var theirs =
        org.shredzone.commons.suncalc.SunPosition.compute()
            .on(at.atZone(ZoneOffset.UTC))
            .at(latitude, longitude)
            .execute();
    assertEquals(theirs.getTrueAltitude(), ours.elevationDeg(), 0.1);
    if (Math.abs(ours.elevationDeg()) < 80) {
      double turn = Math.IEEEremainder(theirs.getAzimuth() - ours.azimuthDeg(), 360);
      // A degree of azimuth shrinks towards the zenith.
      assertEquals(0, turn * Math.cos(Math.toRadians(ours.elevationDeg())), 0.1);
    }
  }
}
