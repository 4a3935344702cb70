package yardloom.sun.position;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SolarPositionsTest {
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
    SunPosition sun =
        SolarPositions.apparent(
            Instant.parse(utc), latitude, longitude, elevationM, pressureHpa, temperatureC);
    assertEquals(azimuth, sun.azimuthDeg(), azimuthTolerance, id + " azimuth, " + source);
    assertEquals(elevation, sun.elevationDeg(), elevationTolerance, id + " elevation, " + source);
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "apparent-sun.csv", numLinesToSkip = 1)
  void declinationDistanceAndEquationOfTime_equalPublished(
      String id,
      String utc,
      double declination,
      double declinationTolerance,
      Double distance,
      Double distanceTolerance,
      Double equationMinutes,
      Double equationTolerance,
      String source) {
    Instant at = Instant.parse(utc);
    assertEquals(declination, SolarPositions.declinationDeg(at), declinationTolerance, source);
    if (distance != null) {
      assertEquals(distance, SolarPositions.distanceAu(at), distanceTolerance, source);
    }
    if (equationMinutes != null) {
      assertEquals(
          equationMinutes, SolarPositions.equationOfTimeMinutes(at), equationTolerance, source);
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
    assertEquals(0, offMinutes, toleranceMinutes, id + " " + source);
  }

  /** commons-suncalc, a second library with other series: both agree to 0.1°. */
  @Property(tries = 500, seed = "20261125")
  void geometricPosition_agreesWithSecondLibrary(
      @ForAll @DoubleRange(min = -66, max = 66) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude,
      @ForAll @LongRange(min = 0, max = 1_577_836_800L) long seconds) {
    Instant at = Instant.parse("2000-01-01T00:00:00Z").plusSeconds(seconds);
    SunPosition ours = SolarPositions.geometric(at, latitude, longitude);
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
