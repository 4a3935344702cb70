package yardloom.sun.position;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.outside.OutsideRows;

class DayLengthTest {
  private static final OutsideRows ROWS = OutsideRows.of(DayLengthTest.class, "day-length.csv");
  private static final OutsideRows NOON =
      OutsideRows.of(DayLengthTest.class, "/yardloom/sun/sun-checks.csv");

  @ParameterizedTest(name = "{0}: {1}°, declination {2}°")
  @CsvFileSource(resources = "day-length.csv", numLinesToSkip = 1)
  void hours_equalClosedForm(
      String id, double latitude, double declination, double hours, double tolerance, String src) {
    ROWS.check(
        id,
        latitude + " " + declination,
        hours,
        24
            / Math.PI
            * DayLength.sunsetHourAngle(Math.toRadians(latitude), Math.toRadians(declination)),
        tolerance);
  }

  @Test
  void poles_haveDaysOf24OrNoHours() {
    double summer = Math.toRadians(23);
    assertEquals(24, 24 / Math.PI * DayLength.sunsetHourAngle(Math.toRadians(80), summer), 1e-12);
    assertEquals(0, 24 / Math.PI * DayLength.sunsetHourAngle(Math.toRadians(80), -summer), 1e-12);
  }

  /** E01 to E04: 90 - |latitude - declination|. */
  @ParameterizedTest(name = "{0}: latitude {1}, declination {2}: noon at {3}°, bearing {4}°")
  @CsvSource({
    "E01, 40, 23.44, 73.44, 180",
    "E01, 40, 0, 50.00, 180",
    "E01, 40, -23.44, 26.56, 180",
    "E02, 42.36, 0, 47.64, 180",
    "E03, -33.9, 23.44, 32.66, 0",
    "E03, -33.9, -23.44, 79.54, 0",
    "E04, 20, 23.44, 86.56, 0"
  })
  void noonSun_standsAsPublished(
      String id, double latitude, double declination, double elevation, double bearing) {
    double phi = Math.toRadians(latitude);
    double delta = Math.toRadians(declination);
    NOON.check(
        id,
        "latitude " + latitude + ", declination " + declination,
        elevation,
        Math.toDegrees(DayLength.elevation(phi, delta, 0)),
        0.01);
    double found = Math.toDegrees(DayLength.bearing(phi, delta, 0));
    assertEquals(0, Math.IEEEremainder(found - bearing, 360), 0.01, id);
  }
}
