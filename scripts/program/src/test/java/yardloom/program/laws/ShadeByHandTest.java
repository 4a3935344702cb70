package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * From plan text to the printed sun tables where something stands in the sun's way at noon: a
 * tower, a trunk, the bed's own plants. Sun and days as in {@link SunByHandTest}; the sun's bearing
 * by tan a = sin h / (cos h sin φ − tan δ cos φ), a from south to west (FAO-56 geometry).
 */
class ShadeByHandTest {
  private static final String YARD =
      """
      plan 'Shade by hand', units: 'metric'
      site 'place', latitude: 43.3.deg, longitude: -92.4.deg, zone: 'Etc/GMT+6'
      lot([point(0.m, 0.m), point(17.m, 0.m), point(17.m, 25.m), point(0.m, 25.m)])
      bed('bed', rect(6.m, 14.m, 0.8.m, 2.m), use: 'perennial')%s
      """;

  /** A change between sun and shade is placed to two minutes; printed are tenths of an hour. */
  private static final double CHANGE_H = 2.0 / 60;

  private static final double PRINTED_H = 0.051;

  private static double cell(Drawn drawn, String place, String day, int column) {
    var table = drawn.tables().get("sun-light");
    return table.rows().stream()
        .filter(r -> r.get(0).value().orElseThrow().equals(place))
        .filter(r -> r.get(1).value().orElseThrow().toString().contains(day))
        .map(
            r ->
                Double.parseDouble(
                    drawn.format().plain(table.columns().get(column), r.get(column))))
        .findFirst()
        .orElseThrow();
  }

  /** The hour angle, in hours, at which the sun stands so far west of south. */
  private static double hourAt(double degreesWest, double declinationRad) {
    double latitude = Math.toRadians(SunByHandTest.LATITUDE_DEG);
    double low = -5;
    double high = 5;
    for (int i = 0; i < 60; i++) {
      double h = Math.toRadians(15 * (low + high) / 2);
      double west =
          Math.toDegrees(
              Math.atan2(
                  Math.sin(h),
                  Math.cos(h) * Math.sin(latitude)
                      - Math.tan(declinationRad) * Math.cos(latitude)));
      if (west < degreesWest) {
        low = (low + high) / 2;
      } else {
        high = (low + high) / 2;
      }
    }
    return low;
  }

  /**
   * The middle of the bed is (6.4, 15). Its north face on y = 9.3, 5.7 m south, the tower reaches
   * from 1.7 m east of it (16.61° east of south) to 0.5 m west (5.01° west), and 60 m up, more than
   * the sun ever.
   */
  @ParameterizedTest
  @CsvSource({"3, --03-16", "6, --06-11", "9, --09-15", "12, --12-10"})
  void tower_inTheSouth_partsTheDayInTwo(int month, String day) {
    Drawn drawn =
        Drawn.of(
            YARD.formatted("")
                + "building 'tower', rect(5.9.m, 8.5.m, 2.2.m, 0.8.m), eaves: 60.m\n");
    double declination = SunByHandTest.noonOfMeanDay(month).declinationRad();
    double half = SunByHandTest.halfDay(declination);
    double gone = hourAt(-Math.toDegrees(Math.atan(1.7 / 5.7)), declination);
    double back = hourAt(Math.toDegrees(Math.atan(0.5 / 5.7)), declination);
    assertTrue(gone < -0.3 && back > 0.1, gone + " " + back);
    String bed = "bed \"bed\"";
    assertEquals(half - back, cell(drawn, bed, day, 4), 2 * CHANGE_H + PRINTED_H, "longest");
    assertEquals(
        half + gone + half - back, cell(drawn, bed, day, 5), 4 * CHANGE_H + PRINTED_H, "direct");
    assertEquals(half + gone, cell(drawn, bed, day, 6), 2 * CHANGE_H + PRINTED_H, "before noon");
  }

  /**
   * Its trunk, 1 m across and 8 m south of the middle of the bed, is solid up to a quarter of the
   * crown: 4 m + (12 m − 4 m) / 4 = 6 m, 36.9° high from here; all light passes the crown. At noon
   * the sun is 90° − 43.3° + δ high: 44.8° in mid March, above it; 23.8° in December, behind it for
   * 2 × arcsin(0.5 / 8) = 7.17° of bearing.
   */
  @Test
  void trunk_inTheSouth_hidesTheWinterSunAtNoonAndNotThatOfMarch() {
    Drawn drawn =
        Drawn.of(
            YARD.formatted("")
                + "tree('ash', point(6.4.m, 7.m), crown: 3.m, height: 12.m, crownBase: 4.m,"
                + " trunk: 1.m) { crown inLeaf: 1, bare: 1 }\n");
    String bed = "bed \"bed\"";
    double march = SunByHandTest.halfDay(SunByHandTest.noonOfMeanDay(3).declinationRad());
    assertEquals(2 * march, cell(drawn, bed, "--03-16", 4), 2 * CHANGE_H + PRINTED_H, "March");
    double declination = SunByHandTest.noonOfMeanDay(12).declinationRad();
    double half = SunByHandTest.halfDay(declination);
    double back = hourAt(Math.toDegrees(Math.asin(0.5 / 8)), declination);
    // 0.24 h at either side of noon; a trunk of twice the width would take twice as long.
    assertEquals(0.24, back, 0.01);
    assertEquals(half - back, cell(drawn, bed, "--12-10", 4), 2 * CHANGE_H + PRINTED_H, "longest");
    assertEquals(
        2 * half - 2 * back, cell(drawn, bed, "--12-10", 5), 4 * CHANGE_H + PRINTED_H, "direct");
  }

  /** The word says: without it, a quarter of its height. */
  @Test
  void crownBase_notGiven_isAQuarterOfTheHeight() {
    String tree = "tree('ash', point(6.4.m, 11.m), crown: 3.m, height: 12.m%s, trunk: 30.cm)\n";
    Drawn without = Drawn.of(YARD.formatted("") + tree.formatted(""));
    Drawn quarter = Drawn.of(YARD.formatted("") + tree.formatted(", crownBase: 3.m"));
    Drawn higher = Drawn.of(YARD.formatted("") + tree.formatted(", crownBase: 4.5.m"));
    assertEquals(without.csv().get("sun-hours"), quarter.csv().get("sun-hours"));
    assertEquals(without.csv().get("sun-light"), quarter.csv().get("sun-light"));
    assertTrue(!without.csv().get("sun-hours").equals(higher.csv().get("sun-hours")));
  }

  /** Nothing else stands in the yard: in the bed the sun is that of the open ground. */
  @Test
  void plants_inTheirOwnBed_takeNoSunFromIt() {
    Drawn drawn =
        Drawn.of(
            YARD.formatted(" { plant 'red raspberry' }")
                .replace("rect(6.m, 14.m, 0.8.m, 2.m)", "rect(6.m, 12.m, 2.m, 4.m)"));
    assertTrue(drawn.exact("plant-list", "red raspberry", "count") > 0);
    for (String day : List.of("--03-16", "--06-11", "--09-15", "--12-10")) {
      for (int column = 4; column <= 6; column++) {
        assertEquals(
            cell(drawn, "open level ground", day, column),
            cell(drawn, "bed \"bed\"", day, column),
            day);
      }
    }
    assertEquals(
        drawn.printed("sun-hours", "open level ground", "season"),
        drawn.printed("sun-hours", "bed \"bed\"", "season"));
  }

  /** Mid December to July: 17 + 31 + 28 + 31 + 30 + 31 + 30 + 31 = 229 days. */
  @Test
  void season_overTheTurnOfTheYear_countsAllItsMonths() {
    Drawn drawn = Drawn.of(YARD.formatted("") + "sunSeason '12-15', '07-31'\n");
    double sum = 0;
    int days = 0;
    for (LocalDate day = LocalDate.of(2026, 1, 1); day.getYear() == 2026; day = day.plusDays(1)) {
      if (day.getMonthValue() <= 7 || day.isAfter(LocalDate.of(2026, 12, 14))) {
        sum += 2 * SunByHandTest.halfDay(SunByHandTest.noon(day).declinationRad());
        days++;
      }
    }
    assertEquals(229, days);
    // Steps of a day cancel over many days.
    assertEquals(
        sum / days,
        Double.parseDouble(drawn.printed("sun-hours", "bed \"bed\"", "season")),
        CHANGE_H + PRINTED_H);
    double january = drawn.exact("sun-hours", "bed \"bed\"", "jan");
    // Without its 31 days the mean would be half an hour more.
    assertTrue(31 * (sum / days - january) / (days - 31) > 0.4, "January would not be missed");
  }
}
