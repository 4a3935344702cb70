package yardloom.climate.frost.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.climate.et.formula.Air;
import yardloom.climate.weather.DailyWeather;
import yardloom.kernel.unit.Temperature;

/**
 * Years of invented weather, counted by hand: winter months at 40 °F day and night, all others
 * between 60 and 90 °F.
 *
 * <p>On the last winter day the evening warms towards the 60 °F of the next morning, by 50 − 10
 * cos(π k / 14) in the hours k = 0 to 13 from 15 h on: 40, 40.3, 41.0, 42.2, 43.8 (5 hours below
 * 45), 45.7, 47.8 (7 up to 48), 50, 52.2 (2 up to 54), 54.3 … 59.8 °F (none). The ten hours before
 * are 40 °F.
 */
class WeatherYearsTest {
  private static WeatherYears year(boolean south, Set<Integer> winter) {
    SortedMap<LocalDate, DailyWeather.Day> days = new TreeMap<>();
    LocalDate start = Freezes.start(2013, south);
    for (LocalDate d = start; d.isBefore(start.plusDays(365)); d = d.plusDays(1)) {
      boolean cold = winter.contains(d.getMonthValue());
      days.put(d, new DailyWeather.Day(celsius(cold ? 40 : 90), celsius(cold ? 40 : 60)));
    }
    return new WeatherYears(new DailyWeather(days, "invented"), south);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /** January 31, February 27 and the last day, November 30, December 31 days of 24 hours. */
  @Test
  void northernWinter_isNovemberToFebruary() {
    WeatherYears north = year(false, Set.of(11, 12, 1, 2));
    assertEquals(List.of(2013), north.years());
    int whole = 24 * (31 + 27 + 30 + 31);
    assertEquals(whole + 10 + 5, north.chillHours());
    assertEquals(whole + 10 + 5, north.chillHoursAboveFreezing());
    assertEquals(whole + 10 + 7 + 2 * 0.5, north.utahUnits());
    assertEquals(40, north.meanLowest().fahrenheit(), 1e-9);
  }

  /** July 31, August 30 and the last day, May 31 and June 30 days. */
  @Test
  void southernWinter_isMayToAugust() {
    WeatherYears south = year(true, Set.of(5, 6, 7, 8));
    assertEquals(24 * (31 + 30 + 31 + 30) + 10 + 5, south.chillHours());
  }

  /**
   * Cold weather outside the months of winter gives no chill but on its last evening, which cools
   * to the 40 °F of the next morning: 65 + 25 cos(π k / 14) is below 45 in the hours 12 and 13.
   */
  @Test
  void coldSpringAndFall_areNoWinter() {
    assertEquals(2, year(false, Set.of(3, 4, 9, 10)).chillHours());
    assertEquals(2, year(true, Set.of(3, 4, 9, 10)).chillHours());
  }

  /**
   * 365 − 120 warm days: by means 75 − 50 = 25 °F·d each, by the 86/50 method (86 + 60) / 2 − 50 =
   * 23; those at 40 °F none.
   */
  @Test
  void degreeDays_areThoseOfTheWarmDays() {
    WeatherYears north = year(false, Set.of(11, 12, 1, 2));
    assertEquals(245 * 25, north.degreeDays(), 1e-6);
    assertEquals(245 * 23, north.modifiedDegreeDays(), 1e-6);
  }

  /** Freezing at 40 °F and below: the last of spring on 28 February, the first on 1 November. */
  @Test
  void freezes_areThoseOfTheYearsThatCount() {
    FreezeRecord freezes = year(false, Set.of(11, 12, 1, 2)).freezes(celsius(40.1));
    assertEquals(Optional.of(MonthDay.of(2, 28)), freezes.lastOfSpring(0.5));
    assertEquals(Optional.of(MonthDay.of(11, 1)), freezes.firstOfFall(0.5));
  }

  /** 355 days make a year, 354 do not. */
  @Test
  void yearWithTooFewDays_doesNotCount() {
    SortedMap<LocalDate, DailyWeather.Day> days = new TreeMap<>();
    for (int i = 0; i < 355; i++) {
      days.put(LocalDate.of(2013, 1, 1).plusDays(i), new DailyWeather.Day(10, 5));
    }
    assertEquals(List.of(2013), new WeatherYears(new DailyWeather(days, "x"), false).years());
    days.remove(LocalDate.of(2013, 3, 3));
    assertEquals(List.of(), new WeatherYears(new DailyWeather(days, "x"), false).years());
    assertEquals(
        List.of(), new WeatherYears(new DailyWeather(new TreeMap<>(), "x"), false).years());
  }

  /**
   * In the south the last freezes on 10 and 20 September, the first on 3 and 13 May: a quarter of
   * the way is 12.5 September, up to the 13th for spring, and 5.5 May, down to the 5th.
   */
  @Test
  void southernPercentiles_lieBetweenTheDates_onTheSafeSide() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    minima.put(LocalDate.of(2020, 9, 10), -1.0);
    minima.put(LocalDate.of(2021, 5, 3), -1.0);
    minima.put(LocalDate.of(2021, 9, 20), -1.0);
    minima.put(LocalDate.of(2022, 5, 13), -1.0);
    FreezeRecord record = new FreezeRecord(minima, List.of(2020, 2021), true, 0);
    assertEquals(Optional.of(MonthDay.of(9, 10)), record.lastOfSpring(0));
    assertEquals(Optional.of(MonthDay.of(9, 13)), record.lastOfSpring(0.25));
    assertEquals(Optional.of(MonthDay.of(9, 20)), record.lastOfSpring(1));
    assertEquals(Optional.of(MonthDay.of(5, 5)), record.firstOfFall(0.25));
    assertEquals(Optional.of(MonthDay.of(5, 8)), record.firstOfFall(0.5));
    assertThrows(
        IllegalArgumentException.class, () -> new FreezeRecord(minima, List.of(), true, 0));
  }

  /** The leap day counts as itself on both halves of the earth, and so do the ends of the year. */
  @Test
  void leapDay_andTheFirstOfJanuary_areKept() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    minima.put(LocalDate.of(2020, 2, 29), -1.0);
    assertEquals(
        Optional.of(MonthDay.of(2, 29)),
        new FreezeRecord(minima, List.of(2020), false, 0).lastOfSpring(0.5));
    assertEquals(
        Optional.of(MonthDay.of(2, 29)),
        new FreezeRecord(minima, List.of(2019), true, 0).firstOfFall(0.5));
    SortedMap<LocalDate, Double> ends = new TreeMap<>();
    ends.put(LocalDate.of(2021, 1, 1), -1.0);
    ends.put(LocalDate.of(2021, 12, 31), -1.0);
    FreezeRecord record = new FreezeRecord(ends, List.of(2021), false, 0);
    assertEquals(Optional.of(MonthDay.of(1, 1)), record.lastOfSpring(0.5));
    assertEquals(Optional.of(MonthDay.of(12, 31)), record.firstOfFall(0.5));
  }

  /** A minimum at the limit is a freeze. */
  @Test
  void limitItself_isAFreeze() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    minima.put(LocalDate.of(2021, 4, 4), 0.0);
    minima.put(LocalDate.of(2021, 4, 5), 0.1);
    assertEquals(
        Optional.of(LocalDate.of(2021, 4, 4)), Freezes.of(minima, 2021, false, 0).lastOfSpring());
  }

  /** An almanac: light 29 to 32, moderate 25 to 28, severe to 24 °F (read). */
  @ParameterizedTest
  @CsvSource({"33, NONE", "32, LIGHT", "29, LIGHT", "28, MODERATE", "25, MODERATE", "24, SEVERE"})
  void freeze_hasItsClass(int fahrenheit, Freezes.Strength strength) {
    assertEquals(strength, Freezes.strength(fahrenheit));
  }

  /** UC Davis, About Chilling Hours (read): below 45 °F; above 32; bins end at 36, 48, 54 … */
  @Test
  void chill_atTheEndsOfItsBins() {
    assertEquals(0, Chill.belowFortyFive(45));
    assertEquals(0, Chill.aboveFreezing(45));
    assertEquals(0, Chill.aboveFreezing(32));
    assertEquals(0, Chill.utah(34));
    assertEquals(0.5, Chill.utah(36));
    assertEquals(1, Chill.utah(48));
    assertEquals(0.5, Chill.utah(54));
    assertEquals(0, Chill.utah(60));
    assertEquals(-0.5, Chill.utah(65));
    assertInstanceOf(HardinessZone.AboveScale.class, HardinessZone.of(Temperature.fahrenheit(70)));
  }

  /** FAO-56, Annex 2, Table 2.3: saturated at 20 °C with 2.338 kPa; 0.14 × 1.5 × 100 + 2.1 mm. */
  @Test
  void air_hasItsDewPointAndWater() {
    assertEquals(20, Air.dewPointC(2.338), 0.01);
    assertEquals(5, Air.dewPointC(0.872), 0.02);
    assertEquals(23.1, Air.precipitableWaterMm(1.5, 100), 1e-9);
    assertEquals(7, Air.dewPointByMinimum(7, false));
    assertEquals(5, Air.dewPointByMinimum(7, true));
  }
}
