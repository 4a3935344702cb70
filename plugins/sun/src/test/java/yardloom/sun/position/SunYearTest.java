package yardloom.sun.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days of the year by the sun's declination. */
class SunYearTest {
  private static final SunYear YEAR = new SunYear(-88.2);

  /**
   * Declinations of the mean day of each month as solar handbooks print them after Klein 1977 (from
   * memory). They follow Cooper's fit, which is up to a degree off the almanac in spring and fall.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1, --01-17, -20.9", "2, --02-16, -13.0", "3, --03-16, -2.4", "4, --04-15, 9.4",
    "5, --05-15, 18.8", "6, --06-11, 23.1", "7, --07-17, 21.2", "8, --08-16, 13.5",
    "9, --09-15, 2.2", "10, --10-15, -9.6", "11, --11-14, -18.9", "12, --12-10, -23.0"
  })
  void meanDays_haveTheDeclinationOfHandbooks(int month, String day, double declinationDeg) {
    assertEquals(MonthDay.parse(day), SunYear.MEAN_DAYS.get(month - 1));
    double tan = YEAR.tan(SunYear.day(MonthDay.parse(day)));
    assertEquals(declinationDeg, Math.toDegrees(Math.atan(tan)), 0.9);
  }

  /**
   * The obliquity of the ecliptic is 23.44°; the solstices of 2026 fall on 21 June and December.
   */
  @Test
  void solstices_areTheEndsOfTheOrder() {
    assertEquals(23.44, Math.toDegrees(Math.atan(YEAR.limit())), 0.01);
    assertEquals(SunYear.day(MonthDay.of(12, 21)), YEAR.dayAtRank(0), 1);
    assertEquals(SunYear.day(MonthDay.of(6, 21)), YEAR.dayAtRank(364), 1);
    assertTrue(YEAR.tan(YEAR.dayAtRank(0)) < -0.43 && YEAR.tan(YEAR.dayAtRank(364)) > 0.43);
  }

  /**
   * The equinoxes of 2026, 20 March 14:46 and 23 September 0:05 UTC (from memory): at solar noon,
   * some 17:53 UTC here, the sun is 3.1 h past the one and 6.2 h before the other, at 0.39° a day.
   */
  @Test
  void equinoxes_areWhereTheSunCrossesTheEquator() {
    assertEquals(0.051, degrees(MonthDay.of(3, 20)), 0.01);
    assertEquals(0.101, degrees(MonthDay.of(9, 22)), 0.01);
    assertEquals(0.39, degrees(MonthDay.of(3, 21)) - degrees(MonthDay.of(3, 20)), 0.01);
  }

  private static double degrees(MonthDay day) {
    return Math.toDegrees(Math.atan(YEAR.tan(SunYear.day(day))));
  }

  @Test
  void daysAndMonths_areThoseOfTheCalendar() {
    assertEquals(0, SunYear.day(MonthDay.of(1, 1)));
    assertEquals(57, SunYear.day(MonthDay.of(2, 27)));
    assertEquals(58, SunYear.day(MonthDay.of(2, 28)));
    assertEquals(58, SunYear.day(MonthDay.of(2, 29)), "counts as the 28th");
    assertEquals(59, SunYear.day(MonthDay.of(3, 1)));
    assertEquals(87, SunYear.day(MonthDay.of(3, 29)));
    assertEquals(364, SunYear.day(MonthDay.of(12, 31)));
    assertEquals(0, SunYear.month(0));
    assertEquals(0, SunYear.month(30));
    assertEquals(1, SunYear.month(31));
    assertEquals(2, SunYear.month(59));
    assertEquals(11, SunYear.month(364));
  }

  /** The rank of a value is how many days lie below it, counted one by one. */
  @Test
  void rank_countsTheDaysBelow() {
    for (double t = -0.46; t <= 0.46; t += 0.00037) {
      assertEquals(below(t), YEAR.rank(t), "t " + t);
    }
    for (int day = 0; day < SunYear.DAYS; day++) {
      assertEquals(below(YEAR.tan(day)), YEAR.rank(YEAR.tan(day)), "day " + day);
      assertEquals(below(YEAR.tan(day) + 1e-9), YEAR.rank(YEAR.tan(day) + 1e-9), "day " + day);
    }
    assertEquals(0, YEAR.rank(Double.NEGATIVE_INFINITY));
    assertEquals(365, YEAR.rank(5));
    for (int rank = 1; rank < SunYear.DAYS; rank++) {
      assertTrue(YEAR.tan(YEAR.dayAtRank(rank - 1)) <= YEAR.tan(YEAR.dayAtRank(rank)));
    }
  }

  private static int below(double t) {
    int days = 0;
    for (int day = 0; day < SunYear.DAYS; day++) {
      days += YEAR.tan(day) < t ? 1 : 0;
    }
    return days;
  }

  /** Noon is taken by the sun: at 180° west it falls when the next day's does at 180° east. */
  @Test
  void noon_isThatOfThePlace() {
    SunYear west = new SunYear(-180);
    SunYear east = new SunYear(180);
    for (int day = 0; day < SunYear.DAYS - 1; day++) {
      assertEquals(east.tan(day + 1), west.tan(day), 0);
    }
  }
}
