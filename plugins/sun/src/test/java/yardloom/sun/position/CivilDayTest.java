package yardloom.sun.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.shredzone.commons.suncalc.SunTimes;
import yardloom.kernel.outside.OutsideRows;
import yardloom.sun.position.CivilDay.Horizon;
import yardloom.sun.position.DayEvents.RiseAndSet;

class CivilDayTest {
  private static final double GOLDEN_LATITUDE = 39.742476;
  private static final double GOLDEN_LONGITUDE = -105.1786;

  private static RiseAndSet ordinary(double latitude, double longitude, String date, ZoneId zone) {
    return assertInstanceOf(
        RiseAndSet.class,
        new CivilDay(latitude, longitude, Horizon.UPPER_LIMB).on(LocalDate.parse(date), zone));
  }

  private static final OutsideRows EVENTS = OutsideRows.of(CivilDayTest.class, "events.csv");
  private static final OutsideRows ANCHORAGE = OutsideRows.of(CivilDayTest.class, "anchorage.csv");

  private static void assertNear(
      LocalTime expected, ZonedDateTime found, long seconds, String why) {
    long off = Duration.between(expected, found.toLocalTime()).getSeconds();
    assertTrue(Math.abs(off) <= seconds, why + ": expected " + expected + ", got " + found);
  }

  private static void row(
      OutsideRows rows, String id, String what, LocalTime is, ZonedDateTime got, long seconds) {
    assertNear(is, got, seconds, id + " " + what);
    LocalTime second = got.toLocalTime().plusNanos(500_000_000).truncatedTo(ChronoUnit.SECONDS);
    rows.met(id, what, second.format(DateTimeFormatter.ISO_LOCAL_TIME), seconds + " s");
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "events.csv", numLinesToSkip = 1)
  void events_equalPublished(
      String id,
      String date,
      String offset,
      double latitude,
      double longitude,
      LocalTime sunrise,
      LocalTime transit,
      LocalTime sunset,
      long toleranceSeconds,
      String source) {
    RiseAndSet day = ordinary(latitude, longitude, date, ZoneOffset.of(offset));
    row(EVENTS, id, "sunrise", sunrise, day.sunrise(), toleranceSeconds);
    row(EVENTS, id, "sunset", sunset, day.sunset(), toleranceSeconds);
    if (transit != null) {
      row(EVENTS, id, "transit", transit, day.transit(), toleranceSeconds);
    }
    assertEquals(date, day.sunset().toLocalDate().toString(), id + " the sunset is of that date");
  }

  /** A25 and C19: two published sunsets belong to the evening before. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"A25, 2003-10-17, 17:20:19, 17:18:51", "C19, 2015-08-02, 19:13:58, 19:12:55"})
  void sunset_isNotTheWrappedOneOfTheEveningBefore(
      String id, String date, LocalTime wrapped, LocalTime right) {
    ZoneOffset zone = ZoneOffset.ofHours(-7);
    RiseAndSet day = ordinary(GOLDEN_LATITUDE, GOLDEN_LONGITUDE, date, zone);
    assertNear(right, day.sunset(), 2, id);
    assertNotEquals(wrapped, day.sunset().toLocalTime());
    String eve = LocalDate.parse(date).minusDays(1).toString();
    RiseAndSet before = ordinary(GOLDEN_LATITUDE, GOLDEN_LONGITUDE, eve, zone);
    assertNear(wrapped, before.sunset(), 2, id + " of the evening before");
  }

  /** Far west, the sunset that a UT table lists under a date is that of the local day before. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "anchorage.csv", numLinesToSkip = 1)
  void eventsByUtDate_equalTableForAnchorage(
      String id, LocalDate utcDate, LocalTime rise, LocalTime set, String source) {
    ZoneId zone = ZoneId.of("America/Anchorage");
    RiseAndSet same = ordinary(61.216667, -149.866667, utcDate.toString(), zone);
    RiseAndSet before = ordinary(61.216667, -149.866667, utcDate.minusDays(1).toString(), zone);
    ZonedDateTime riseUtc = same.sunrise().withZoneSameInstant(ZoneOffset.UTC);
    ZonedDateTime setUtc = before.sunset().withZoneSameInstant(ZoneOffset.UTC);
    assertEquals(utcDate, riseUtc.toLocalDate());
    assertEquals(utcDate, setUtc.toLocalDate());
    row(ANCHORAGE, id, "rise", rise, riseUtc, 60);
    row(ANCHORAGE, id, "set", set, setUtc, 60);
  }

  /** C12, C13. */
  @Test
  void polarDayAndNight_haveTransitsOnly() {
    CivilDay longyearbyen = new CivilDay(78.216667, 15.633333, Horizon.UPPER_LIMB);
    ZoneId zone = ZoneId.of("Europe/Oslo");
    assertInstanceOf(
        DayEvents.PolarDay.class, longyearbyen.on(LocalDate.parse("2020-06-15"), zone), "C12");
    assertInstanceOf(
        DayEvents.PolarNight.class, longyearbyen.on(LocalDate.parse("2020-12-25"), zone), "C12");
    DayEvents honningsvag =
        new CivilDay(70.978056, 25.974722, Horizon.UPPER_LIMB)
            .on(LocalDate.parse("2015-06-17"), ZoneOffset.ofHours(2));
    assertInstanceOf(DayEvents.PolarDay.class, honningsvag);
    assertNear(LocalTime.parse("12:16:55"), honningsvag.transit(), 2, "C13");
  }

  /** C24: length of the longest and shortest day of 2020, upper limb. */
  @ParameterizedTest(name = "C24 at {0}°")
  @CsvSource({"30, 14:05, 10:13", "40, 15:01, 09:20", "50, 16:22, 08:04", "60, 18:52, 05:52"})
  void solsticeDays_haveKnownLength(double latitude, LocalTime june, LocalTime december) {
    assertEquals(june.toSecondOfDay(), lengthSeconds(latitude, "2020-06-20"), 60);
    assertEquals(december.toSecondOfDay(), lengthSeconds(latitude, "2020-12-21"), 60);
  }

  private static long lengthSeconds(double latitude, String date) {
    RiseAndSet day = ordinary(latitude, 0, date, ZoneOffset.UTC);
    return Duration.between(day.sunrise(), day.sunset()).getSeconds();
  }

  /** B06: NREL SOLPOS without refraction, from a daily declination, hence the wide tolerance. */
  @Test
  void centreOnLevelHorizon_equalsProgramWithoutRefraction() {
    RiseAndSet day =
        assertInstanceOf(
            RiseAndSet.class,
            new CivilDay(35.736160, -78.678856, Horizon.CENTRE)
                .on(LocalDate.parse("2012-02-22"), ZoneOffset.ofHours(-5)));
    assertNear(LocalTime.parse("06:58:11"), day.sunrise(), 60, "B06 sunrise");
    assertNear(LocalTime.parse("17:58:47"), day.sunset(), 60, "B06 sunset");
  }

  @Test
  void summerTime_movesTheClockNotTheSun() {
    RiseAndSet summer =
        ordinary(GOLDEN_LATITUDE, GOLDEN_LONGITUDE, "2015-08-02", ZoneId.of("America/Denver"));
    assertNear(LocalTime.parse("06:00:27"), summer.sunrise(), 2, "an hour later by the clock");
    // The clocks went forward on 8 March 2015; the sun rose about 1.5 minutes earlier that day.
    RiseAndSet before =
        ordinary(GOLDEN_LATITUDE, GOLDEN_LONGITUDE, "2015-03-07", ZoneId.of("America/Denver"));
    RiseAndSet after =
        ordinary(GOLDEN_LATITUDE, GOLDEN_LONGITUDE, "2015-03-08", ZoneId.of("America/Denver"));
    Duration later =
        Duration.between(before.sunrise().toLocalTime(), after.sunrise().toLocalTime());
    assertEquals(60 - 1.5, later.toSeconds() / 60.0, 0.3);
  }

  @Property(tries = 300, seed = "20261125")
  void transit_fallsOnTheCivilDateAndBetweenRiseAndSet(
      @ForAll @DoubleRange(min = -60, max = 60) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude,
      @ForAll @IntRange(min = 0, max = 3650) int day) {
    LocalDate date = LocalDate.of(2018, 1, 1).plusDays(day);
    ZoneId zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
    RiseAndSet events = ordinary(latitude, longitude, date.toString(), zone);
    assertEquals(date, events.transit().toLocalDate());
    assertEquals(date, events.sunrise().toLocalDate());
    assertEquals(date, events.sunset().toLocalDate());
    assertTrue(events.sunrise().isBefore(events.transit()));
    assertTrue(events.transit().isBefore(events.sunset()));
  }

  /** commons-suncalc claims about a minute. */
  @Property(tries = 200, seed = "20261125")
  void riseAndSet_agreeWithSecondLibrary(
      @ForAll @DoubleRange(min = -55, max = 55) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double longitude,
      @ForAll @IntRange(min = 0, max = 3650) int day) {
    LocalDate date = LocalDate.of(2018, 1, 1).plusDays(day);
    ZoneId zone = ZoneOffset.ofHours((int) Math.round(longitude / 15));
    RiseAndSet ours = ordinary(latitude, longitude, date.toString(), zone);
    SunTimes theirs =
        SunTimes.compute().on(date.atStartOfDay(zone)).at(latitude, longitude).execute();
    assertNear(theirs.getRise().toLocalTime(), ours.sunrise(), 120, "sunrise on " + date);
    assertNear(theirs.getSet().toLocalTime(), ours.sunset(), 120, "sunset on " + date);
  }
}
