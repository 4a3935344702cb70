package yardloom.climate.frost.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.climate.weather.DailyWeather;
import yardloom.kernel.unit.Temperature;

/**
 * Hardiness, frost, degree days and chill. Daily weather of Seattle 2012 to 2015 is a U.S.
 * Government data set from the package vega-datasets 3.2.1.
 *
 * <p>Where the cases come from: J01, J02 the definition at planthardiness.ars.usda.gov (read); J03
 * our own rule; J04 conversion; J05 an almanac's "frost and a freeze", light 29 to 32, moderate 25
 * to 28, severe to 24 °F (read); J06 K-State Weather Data Library, 2018-04-06 (read); J07 Utah
 * Climate Center, help of its freeze table (read); J08 MRCC Freeze Date Tool, About (read); J09
 * NCDC Last Freeze/Frost Probability (read); J10, J11, J18 counted in the data; J12, J14, J15 Iowa
 * State Agronomy 541 lesson 2b (read); J13 Waushara Argus 2018-04-25 (read); J16, J17 UC Davis,
 * About Chilling Hours, bins 34/36/48/54/60/65 °F (read).
 */
class ColdAndWarmthTest {
  @ParameterizedTest(name = "J01, J02: {0} °F is zone {1}")
  @CsvSource({
    "-60, 1a",
    "-55, 1b",
    "-50.1, 1b",
    "-20, 5a",
    "-15, 5b",
    "0, 7a",
    "5, 7b",
    "60, 13a",
    "65, 13b",
    "69.9, 13b"
  })
  void zone_equalsDefinition(double fahrenheit, String zone) {
    HardinessZone found = HardinessZone.of(Temperature.fahrenheit(fahrenheit));
    assertEquals(zone, assertInstanceOf(HardinessZone.Zone.class, found).text());
  }

  @Test
  void outsideTheScale_isSaidAndNotClamped() {
    assertInstanceOf(
        HardinessZone.BelowScale.class, HardinessZone.of(Temperature.fahrenheit(-65)), "J03");
    assertInstanceOf(
        HardinessZone.AboveScale.class, HardinessZone.of(Temperature.fahrenheit(75)), "J03");
  }

  @Test
  void lowerBoundOfSevenB_isMinusFifteenCelsius() {
    HardinessZone found = HardinessZone.of(Temperature.celsius(-15));
    assertEquals(new HardinessZone.Zone(7, 'b'), found, "J04");
    HardinessZone colder = HardinessZone.of(Temperature.celsius(-15.05));
    assertEquals(new HardinessZone.Zone(7, 'a'), colder, "J04");
  }

  @ParameterizedTest(name = "J05, J06: {0} °F is {1}")
  @CsvSource({"33, NONE", "31, LIGHT", "29, LIGHT", "27, MODERATE", "25, MODERATE", "24, SEVERE"})
  void freeze_hasItsClass(int fahrenheit, Freezes.Strength strength) {
    assertEquals(strength, Freezes.strength(fahrenheit));
  }

  private static SortedMap<LocalDate, double[]> seattle() {
    SortedMap<LocalDate, double[]> days = new TreeMap<>();
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                ColdAndWarmthTest.class.getResourceAsStream("seattle-days.csv"),
                StandardCharsets.UTF_8))) {
      in.readLine();
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        String[] cells = line.split(",");
        days.put(
            LocalDate.parse(cells[0]),
            new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])});
      }
      return days;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @ParameterizedTest(name = "{0}: Seattle {1}")
  @CsvSource({"J10, 2013, 2013-03-04, 2013-11-21", "J11, 2012, 2012-03-19, 2012-11-10"})
  void freezesOfSeattle_equalThoseInTheData(String id, int year, LocalDate spring, LocalDate fall) {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    seattle().forEach((date, t) -> minima.put(date, t[1]));
    Freezes.Dates found = Freezes.of(minima, year, false, 0);
    assertEquals(Optional.of(spring), found.lastOfSpring(), id);
    assertEquals(Optional.of(fall), found.firstOfFall(), id);
  }

  /** J07: a freeze on 24 July counts to fall. */
  @Test
  void splitBetweenSpringAndFall_isTheTwentyFourthOfJuly() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    minima.put(LocalDate.parse("2020-07-23"), -1.0);
    minima.put(LocalDate.parse("2020-07-24"), -1.0);
    Freezes.Dates found = Freezes.of(minima, 2020, false, 0);
    assertEquals(Optional.of(LocalDate.parse("2020-07-23")), found.lastOfSpring());
    assertEquals(Optional.of(LocalDate.parse("2020-07-24")), found.firstOfFall());
    assertEquals(Optional.empty(), Freezes.of(minima, 2021, false, 0).lastOfSpring());
  }

  @Test
  void degreeDays_equalPublishedExamples() {
    assertEquals(10, DegreeDays.simple(70, 50, 50), 0, "J12");
    assertEquals(25.5, DegreeDays.modified(90, 65), 0, "J13");
    assertEquals(11, DegreeDays.modified(72, 46), 0, "J13");
    assertEquals(6.5, DegreeDays.modified(63, 42), 0, "J13");
    assertEquals(36, DegreeDays.modified(95, 90), 0, "J14");
    assertEquals(0, DegreeDays.simple(45, 30, 50), 0, "J15");
    assertEquals(0, DegreeDays.modified(45, 30), 0, "J15");
  }

  /** J18: 1 May to 30 September 2015. */
  @Test
  void degreeDaysOfASeason_equalThoseInTheData() {
    double simple = 0;
    double modified = 0;
    SortedMap<LocalDate, double[]> season =
        seattle().subMap(LocalDate.parse("2015-05-01"), LocalDate.parse("2015-10-01"));
    for (double[] day : season.values()) {
      double maximum = Temperature.celsius(day[0]).fahrenheit();
      double minimum = Temperature.celsius(day[1]).fahrenheit();
      simple += DegreeDays.simple(maximum, minimum, 50);
      modified += DegreeDays.modified(maximum, minimum);
    }
    assertEquals(2366.5, simple, 0.5, "J18");
    assertEquals(2351.8, modified, 0.5, "J18");
  }

  @ParameterizedTest(name = "J16: {0} °F gives {1}")
  @CsvSource({"30, 0", "35, 0.5", "40, 1", "50, 0.5", "58, 0", "63, -0.5", "70, -1"})
  void utahUnits_equalPublished(double fahrenheit, double units) {
    assertEquals(units, Chill.utah(fahrenheit), 0);
  }

  @Test
  void chillHours_equalPublished() {
    double[] hours = {30, 33, 44, 46};
    int below = 0;
    int above = 0;
    for (double hour : hours) {
      below += Chill.belowFortyFive(hour);
      above += Chill.aboveFreezing(hour);
    }
    assertEquals(3, below, "J17");
    assertEquals(2, above, "J17");
  }

  /** In the south the same weather half a year later gives the same days of the frost year. */
  @Test
  void southernYear_runsFromJulyToJune() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    minima.put(LocalDate.parse("2020-09-10"), -1.0);
    minima.put(LocalDate.parse("2021-01-23"), -1.0);
    minima.put(LocalDate.parse("2021-01-24"), -1.0);
    Freezes.Dates found = Freezes.of(minima, 2020, true, 0);
    assertEquals(Optional.of(LocalDate.parse("2021-01-23")), found.lastOfSpring());
    assertEquals(Optional.of(LocalDate.parse("2021-01-24")), found.firstOfFall());
  }

  /** Eleven years whose last freeze comes on 1 to 11 April and first on 1 to 11 October. */
  private static FreezeRecord elevenYears() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    List<Integer> years = new ArrayList<>();
    for (int k = 0; k <= 10; k++) {
      years.add(2001 + k);
      minima.put(LocalDate.of(2001 + k, 4, 1 + k), -1.0);
      minima.put(LocalDate.of(2001 + k, 10, 1 + k), -1.0);
    }
    return new FreezeRecord(minima, years, false, 0);
  }

  @Test
  void earlyAndLateFreeze_areTheTenthAndNinetiethPercentileOfTheDates() {
    FreezeRecord record = elevenYears();
    assertEquals(Optional.of(MonthDay.of(4, 2)), record.lastOfSpring(0.1), "J08");
    assertEquals(Optional.of(MonthDay.of(4, 10)), record.lastOfSpring(0.9), "J08");
    assertEquals(Optional.of(MonthDay.of(10, 2)), record.firstOfFall(0.1), "J08");
    assertEquals(Optional.of(MonthDay.of(10, 10)), record.firstOfFall(0.9), "J08");
  }

  /** J09: 90 percent at a spring day means that 9 years of 10 freeze after it. */
  @Test
  void tenthOfSpringDates_isTheDayAfterWhichNineYearsOfTenFreeze() {
    MonthDay day = elevenYears().lastOfSpring(0.1).orElseThrow();
    long after =
        IntStream.rangeClosed(0, 10).filter(k -> MonthDay.of(4, 1 + k).compareTo(day) > 0).count();
    assertEquals(9, after, "J09, of the other ten years");
  }

  @Test
  void yearsWithoutFreeze_takeTheDateAway() {
    SortedMap<LocalDate, Double> minima = new TreeMap<>();
    minima.put(LocalDate.of(2001, 3, 1), -1.0);
    FreezeRecord record = new FreezeRecord(minima, List.of(2001, 2002, 2003), false, 0);
    assertEquals(Optional.empty(), record.lastOfSpring(0.5));
    assertEquals(Optional.of(MonthDay.of(3, 1)), record.lastOfSpring(1));
    assertEquals(Optional.empty(), record.firstOfFall(0.5));
  }

  private static WeatherYears seattleYears() {
    SortedMap<LocalDate, DailyWeather.Day> days = new TreeMap<>();
    seattle().forEach((date, t) -> days.put(date, new DailyWeather.Day(t[0], t[1])));
    return new WeatherYears(new DailyWeather(days, "Seattle"), false);
  }

  /** The lowest minima of 2012 to 2015 in the data file: -3.3, -7.1, -6.0, -3.8 °C. */
  @Test
  void meanLowest_isTheMeanOfTheYearsLowestMinima() {
    assertEquals(List.of(2012, 2013, 2014, 2015), seattleYears().years());
    assertEquals(-5.05, seattleYears().meanLowest().celsius(), 1e-9);
  }

  @Test
  void winterChill_liesBetweenNoneAndAllHours() {
    WeatherYears seattle = seattleYears();
    assertTrue(seattle.chillHoursAboveFreezing() <= seattle.chillHours());
    assertTrue(seattle.chillHours() > 0 && seattle.chillHours() <= 24 * 121);
    assertTrue(seattle.utahUnits() <= seattle.chillHours() + 24 * 121 * 0.5);
  }

  @Test
  void dayCourse_runsFromMinimumToMaximumAndBack() {
    double[] hours = DayCourse.hours(40, 60, 50);
    assertEquals(40, hours[0], 1e-12);
    assertEquals(60, hours[10], 1e-12);
    assertEquals(50, hours[5], 1e-12, "half way at half time");
    assertTrue(hours[23] > 50 && hours[23] < 52, "nearly the next minimum");
  }
}
