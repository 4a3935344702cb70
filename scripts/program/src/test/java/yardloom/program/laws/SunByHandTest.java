package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * From plan text to the printed sun tables, against the almanac's formula and the day's length in
 * closed form: a bed on open ground, and one east of a long wall.
 *
 * <p>Sources: declination and equation of time, "low precision formulas for the Sun", Astronomical
 * Almanac, page C5 (coefficients from memory, held here against the positions that the USNO
 * printed); length of the day, FAO Irrigation and Drainage Paper 56, eq. 25 and 34; mean days of
 * the months, S. A. Klein, Solar Energy 19, 1977 (from memory).
 */
class SunByHandTest {
  static final double LATITUDE_DEG = 43.3;
  private static final double LONGITUDE_DEG = -92.4;

  /** Steps of four minutes: half of one at sunrise, half at sunset, and half of a printed tenth. */
  private static final double STEPS_H = 2.0 / 60 + 2.0 / 60 + 0.05 + 0.001;

  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final int[] MEAN_DAY = {17, 16, 16, 15, 15, 11, 17, 16, 15, 15, 14, 10};

  /** No lengths of the yard are the same, nor is the wall in the middle. */
  private static final String YARD =
      """
      plan 'Sun by hand', units: 'metric'
      site 'place', latitude: 43.3.deg, longitude: -92.4.deg, zone: 'Etc/GMT+6'
      lot([point(0.m, 0.m), point(17.m, 0.m), point(17.m, 11.m), point(0.m, 11.m)])
      lightScheme 'temperate'
      sunGrid 10.cm
      bed 'bed', rect(6.m, 4.m, 0.8.m, 2.m), use: 'annual'
      """;

  /** The wall stands on x = 5 m, 400 m to either side; its face towards the bed at 5.0254 m. */
  private static final String WALL =
      "fence 'wall', line([point(5.m, -395.m), point(5.m, 405.m)]), height: 1.3.m, openness: 0\n";

  record Sun(double declinationRad, double equationOfTimeMin) {}

  /** At a moment, in days from noon of 1 January 2000 UT. */
  private static Sun sun(double days) {
    double meanLongitude = 280.460 + 0.9856474 * days;
    double g = Math.toRadians(357.528 + 0.9856003 * days);
    double longitude =
        Math.toRadians(meanLongitude + 1.915 * Math.sin(g) + 0.020 * Math.sin(2 * g));
    double obliquity = Math.toRadians(23.439 - 0.0000004 * days);
    double ascension = Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude));
    double equation = Math.IEEEremainder(meanLongitude - Math.toDegrees(ascension), 360) * 4;
    return new Sun(Math.asin(Math.sin(obliquity) * Math.sin(longitude)), equation);
  }

  /** Days at 0 h UT of 2007: 25 and 28 September, 6 October; degrees, minutes, seconds of arc. */
  @ParameterizedTest
  @CsvSource({
    "2007-09-25, -0.61870, 8.0417",
    "2007-09-28, -1.78648, 9.0767",
    "2007-10-06, -4.88502, 11.6450"
  })
  void formula_atThePositionsTheObservatoryPrinted_isWithinAHundredthOfADegree(
      LocalDate day, double declinationDeg, double equationMin) {
    Sun sun = sun(ChronoUnit.DAYS.between(LocalDate.of(2000, 1, 1), day) - 0.5);
    assertEquals(declinationDeg, Math.toDegrees(sun.declinationRad()), 0.01);
    assertEquals(equationMin, sun.equationOfTimeMin(), 0.1);
  }

  /** At noon of the place: 92.4° west are 6.16 h behind Greenwich. */
  static Sun noon(LocalDate day) {
    double days = ChronoUnit.DAYS.between(LocalDate.of(2000, 1, 1), day);
    return sun(days - LONGITUDE_DEG / 360);
  }

  /** Hours from sunrise to noon: arccos(−tan φ tan δ) / 15°. */
  static double halfDay(double declinationRad) {
    double cosine = -Math.tan(Math.toRadians(LATITUDE_DEG)) * Math.tan(declinationRad);
    return Math.toDegrees(Math.acos(cosine)) / 15;
  }

  /**
   * Hours from noon until a wall in the west, so much higher than the place and so far from it,
   * hides the sun. The sun stands above its top while sin e ≥ (height / distance) × cos e × sin A,
   * A counted from south to west; with sin e = sin φ sin δ + cos φ cos δ cos h and cos e sin A =
   * cos δ sin h this is cos φ cos h − r sin h ≥ −sin φ tan δ.
   */
  private static double untilWall(double declinationRad, double heightM, double distanceM) {
    double latitude = Math.toRadians(LATITUDE_DEG);
    double r = heightM / distanceM;
    double radius = Math.hypot(Math.cos(latitude), r);
    double angle =
        Math.acos(-Math.sin(latitude) * Math.tan(declinationRad) / radius)
            - Math.atan(r / Math.cos(latitude));
    return Math.toDegrees(angle) / 15;
  }

  private static LocalDate meanDay(int month) {
    return LocalDate.of(2026, month + 1, MEAN_DAY[month]);
  }

  static Sun noonOfMeanDay(int month) {
    return noon(meanDay(month - 1));
  }

  private static double printed(Drawn drawn, String row, String column) {
    return Double.parseDouble(drawn.printed("sun-hours", row, column));
  }

  @Test
  void months_onOpenGround_areTheDaysLength() {
    Drawn drawn = Drawn.of(YARD);
    for (String place : List.of("bed \"bed\"", "open level ground")) {
      for (int m = 0; m < 12; m++) {
        double wanted = 2 * halfDay(noon(meanDay(m)).declinationRad());
        assertEquals(wanted, printed(drawn, place, MONTHS.get(m)), STEPS_H, MONTHS.get(m));
      }
    }
    // Two of the twelve by hand: 17 January δ = −20.78°, tan φ = 0.94236, cos ω = 0.35759: ω =
    // 69.05°,
    // 9.21 h; 11 June δ = 23.09°, cos ω = −0.40173: ω = 113.69°, 15.16 h.
    assertEquals(9.2, printed(drawn, "bed \"bed\"", "jan"), 0.051);
    assertEquals(15.2, printed(drawn, "bed \"bed\"", "jun"), 0.051);
  }

  @Test
  void season_onOpenGround_isTheMeanFromAprilToSeptember() {
    Drawn drawn = Drawn.of(YARD);
    double sum = 0;
    int days = 0;
    for (LocalDate day = LocalDate.of(2026, 4, 1);
        !day.isAfter(LocalDate.of(2026, 9, 30));
        day = day.plusDays(1)) {
      sum += 2 * halfDay(noon(day).declinationRad());
      days++;
    }
    assertEquals(183, days);
    assertEquals(sum / days, printed(drawn, "bed \"bed\"", "season"), STEPS_H);
    assertEquals(sum / days / 2, printed(drawn, "bed \"bed\"", "morning"), STEPS_H);
  }

  @Test
  void months_eastOfAWall_endWhereItsTopHidesTheSun() {
    Drawn drawn = Drawn.of(YARD + WALL);
    for (int m = 0; m < 12; m++) {
      double declination = noon(meanDay(m)).declinationRad();
      assertEquals(
          halfDay(declination) + meanUntilWall(declination),
          printed(drawn, "bed \"bed\"", MONTHS.get(m)),
          STEPS_H,
          MONTHS.get(m));
      assertEquals(
          2 * halfDay(declination),
          printed(drawn, "open level ground", MONTHS.get(m)),
          STEPS_H,
          "open in " + MONTHS.get(m));
    }
  }

  /** Over the bed, 0.9746 to 1.7746 m from the wall's face, by the middles of its eight rows. */
  private static double meanUntilWall(double declinationRad) {
    double sum = 0;
    for (int row = 0; row < 8; row++) {
      sum += untilWall(declinationRad, 1.3, 0.9746 + 0.05 + 0.1 * row);
    }
    return sum / 8;
  }

  @Test
  void season_eastOfAWall_losesItsAfternoonAndNotItsMorning() {
    Drawn drawn = Drawn.of(YARD + WALL);
    double morning = 0;
    double afternoon = 0;
    for (LocalDate day = LocalDate.of(2026, 4, 1);
        !day.isAfter(LocalDate.of(2026, 9, 30));
        day = day.plusDays(1)) {
      double declination = noon(day).declinationRad();
      morning += halfDay(declination) / 183;
      afternoon += meanUntilWall(declination) / 183;
    }
    assertTrue(afternoon < morning - 2, "the wall has to matter");
    assertEquals(morning + afternoon, printed(drawn, "bed \"bed\"", "season"), STEPS_H);
    assertEquals(morning, printed(drawn, "bed \"bed\"", "morning"), STEPS_H);
  }

  /**
   * The middle of the bed lies 6.4 − 5.0254 = 1.3746 m from the wall's face. Solar noon in a zone
   * six hours behind: 12 h + (92.4 − 90) × 4 min − equation of time.
   */
  @ParameterizedTest
  @CsvSource({"3, --03-16", "6, --06-11", "9, --09-15", "12, --12-10"})
  void clock_eastOfAWall_showsSunriseAndTheWall(int month, String day) {
    Drawn drawn = Drawn.of(YARD + WALL);
    Sun sun = noon(meanDay(month - 1));
    double noon = 12 + (2.4 * 4 - sun.equationOfTimeMin()) / 60;
    double before = halfDay(sun.declinationRad());
    double after = untilWall(sun.declinationRad(), 1.3, 6.4 - 5.0254);
    int row = List.of("--03-16", "--06-11", "--09-15", "--12-10").indexOf(day);
    // Columns of four minutes are sunny or not as a whole: up to 0.07 h at either end.
    assertEquals(noon - before, hour(light(drawn, row, 2)), 0.09, "first");
    assertEquals(noon + after, hour(light(drawn, row, 3)), 0.09, "last");
    assertEquals(before + after, Double.parseDouble(light(drawn, row, 4)), 0.12, "longest");
    assertEquals(before + after, Double.parseDouble(light(drawn, row, 5)), 0.12, "direct");
    assertEquals(before, Double.parseDouble(light(drawn, row, 6)), 0.09, "before noon");
    assertEquals(day, light(drawn, row, 1));
  }

  private static double hour(String clock) {
    String[] parts = clock.split(":");
    return Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]) / 60.0;
  }

  private static String light(Drawn drawn, int row, int column) {
    var table = drawn.tables().get("sun-light");
    return drawn.format().plain(table.columns().get(column), table.rows().get(row).get(column));
  }
}
