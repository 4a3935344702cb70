package yardloom.sun.position;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.Map;
import net.e175.klaus.solarpositioning.JulianDate;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;

/** The library's intermediates in the worked example of NREL/TP-560-34302: rows A01 to A23, A27. */
class SpaExampleTest {
  private static final OutsideRows SPA_PARTS =
      OutsideRows.of(SpaExampleTest.class, "spa-parts.csv");
  private static final OutsideRows JULIAN_DAYS =
      OutsideRows.of(SpaExampleTest.class, "julian-days.csv");

  private static final double LATITUDE = 39.742476;
  private static final double LONGITUDE = -105.1786;
  private static final ZonedDateTime WHEN = ZonedDateTime.parse("2003-10-17T12:30:30-07:00");
  private static final Map<String, Double> FOUND = found();

  private static Map<String, Double> found() {
    JulianDate day = new JulianDate(WHEN, 67);
    SPA.SpaTimeDependent parts = SPA.calculateSpaTimeDependentParts(WHEN, 67);
    SolarPosition bare =
        SPA.calculateSolarPositionWithTimeDependentParts(LATITUDE, LONGITUDE, 1830.14, parts);
    SolarPosition seen =
        SPA.calculateSolarPositionWithTimeDependentParts(
            LATITUDE, LONGITUDE, 1830.14, 820, 11, parts);
    Map<String, Double> found = new HashMap<>();
    found.put("julianDay", day.julianDate());
    found.put("julianEphemerisDay", day.julianEphemerisDay());
    found.put("heliocentricLongitude", parts.thetaDegrees() - 180);
    found.put("heliocentricLatitude", Math.IEEEremainder(-parts.betaDegrees(), 360));
    found.put("distance", parts.r());
    found.put("geocentricLongitude", parts.thetaDegrees());
    found.put("nutationLongitude", parts.deltaPsi());
    found.put(
        "nutationObliquity",
        parts.epsilonDegrees() - meanObliquityDeg(day.julianEphemerisMillennium() / 10));
    found.put("obliquity", parts.epsilonDegrees());
    found.put("aberration", parts.lambdaDegrees() - parts.thetaDegrees() - parts.deltaPsi());
    found.put("apparentLongitude", parts.lambdaDegrees());
    found.put("siderealTime", parts.nuDegrees());
    found.put("rightAscension", parts.alphaDegrees());
    found.put("declination", parts.deltaDegrees());
    found.put("hourAngle", parts.nuDegrees() + LONGITUDE - parts.alphaDegrees());
    double elevation = Math.toRadians(90 - bare.zenithAngle());
    double azimuth = Math.toRadians(bare.azimuth());
    double latitude = Math.toRadians(LATITUDE);
    double sinDeclination =
        Math.sin(latitude) * Math.sin(elevation)
            + Math.cos(latitude) * Math.cos(elevation) * Math.cos(azimuth);
    found.put("topocentricDeclination", Math.toDegrees(Math.asin(sinDeclination)));
    found.put(
        "topocentricHourAngle",
        Math.toDegrees(
            Math.asin(
                -Math.sin(azimuth) * Math.cos(elevation) / Math.cos(Math.asin(sinDeclination)))));
    found.put("geometricElevation", 90 - bare.zenithAngle());
    found.put("refraction", bare.zenithAngle() - seen.zenithAngle());
    found.put("zenith", seen.zenithAngle());
    found.put("azimuth", seen.azimuth());
    return found;
  }

  /** Mean obliquity of the ecliptic, eq. 24 of the report, for tens of millennia from 2000. */
  private static double meanObliquityDeg(double u) {
    double[] seconds = {
      84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67, -39.05, 7.12, 27.87, 5.79, 2.45
    };
    double sum = 0;
    for (int i = seconds.length - 1; i >= 0; i--) {
      sum = sum * u + seconds[i];
    }
    return sum / 3600;
  }

  @ParameterizedTest(name = "{0} {1} = {2}")
  @CsvFileSource(resources = "spa-parts.csv", numLinesToSkip = 1)
  void part_equalsWorkedExample(
      String id, String quantity, double expected, double tolerance, String source) {
    SPA_PARTS.check(id, expected, FOUND.get(quantity), tolerance);
  }

  @ParameterizedTest(name = "{0} {1} = {2}")
  @CsvFileSource(resources = "julian-days.csv", numLinesToSkip = 1)
  void julianDay_equalsPublished(String id, String utc, double expected, String source) {
    ZonedDateTime when = Instant.parse(utc).atZone(ZoneOffset.UTC);
    JULIAN_DAYS.check(id, utc, expected, new JulianDate(when).julianDate(), 1e-6);
  }
}
