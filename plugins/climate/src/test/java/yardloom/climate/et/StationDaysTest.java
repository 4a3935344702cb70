package yardloom.climate.et;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.climate.ClimatePlugin;
import yardloom.climate.et.formula.Air;
import yardloom.climate.et.formula.StandardizedEt.Surface;
import yardloom.climate.normals.NormalsWords;
import yardloom.climate.radiation.RadiationWords;
import yardloom.climate.radiation.formula.Radiation;
import yardloom.climate.weather.HourlyWeather;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.DailyEt;
import yardloom.facts.ReferenceEt;
import yardloom.facts.YardFacts;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * Published station days of the standardized equation, from the words of a plan to what is printed,
 * so that no step of the chain is left out: wind height, vapour, clear sky of the full form.
 */
class StationDaysTest {
  private static final OutsideRows ROWS = OutsideRows.of(StationDaysTest.class, "station-days.csv");

  private static final Length GAUGE = Length.metres(3);

  private static Site site(double latitude, double longitude, double elevationM, String zone) {
    return new Site(
        "station",
        Angle.degrees(latitude),
        Angle.degrees(longitude),
        Length.metres(elevationM),
        ZoneId.of(zone),
        Angle.ZERO);
  }

  private static final class Yard {
    final Draft draft =
        new Draft(new PlanInfo("test", "Test yard", "", "", "", "", UnitSystem.METRIC, ""));
    final PlanScope plan = new PlanScope(draft, new SourceRef("plan.groovy", 4, 1));

    Yard(Site site) {
      draft.site(site, SourceRef.NONE);
    }

    Outcome outcome() {
      return new Study(PluginLoader.of(List.of(new ClimatePlugin()))).of(draft.freeze());
    }
  }

  private static Table table(Outcome outcome) {
    return outcome.tables().stream()
        .filter(t -> t.id().equals("reference-et"))
        .findFirst()
        .orElseThrow();
  }

  private static String printed(Table table, int row, int column) {
    return new TableFormat(UnitSystem.METRIC, "USD")
        .text(table.columns().get(column), table.rows().get(row).get(column));
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "station-days.csv", numLinesToSkip = 1)
  void stationDay_fromItsRecord_isThePublishedOne(
      String id,
      double latitude,
      double elevationM,
      LocalDate date,
      double maxC,
      double minC,
      double solarMj,
      double wind,
      double dewC,
      double grass,
      double alfalfa,
      double tolerance) {
    Yard yard = new Yard(site(latitude, -115, elevationM, "Etc/GMT+8"));
    String text =
        "date,max,min,dew,wind_ms,solar_mj\n"
            + String.join(",", date.toString(), "" + maxC, "" + minC, "" + dewC, "" + wind)
            + ","
            + solarMj;
    WeatherWords.dailyWeather(yard.plan, text, "station", null, GAUGE);
    DailyEt et = yard.outcome().results().get(YardFacts.DAILY_ET);
    ROWS.check(id, "grass", grass, et.days().get(date).millimetres(), tolerance);
    ROWS.check(id, "alfalfa", alfalfa, et.tall().get(date).millimetres(), tolerance);
    assertTrue(et.method().startsWith("the ASCE standardized equation, day by day"), et.method());
  }

  /** G03 and a second day of June: mean and greatest are those of (9.64 + 6) / 2 and 9.64 mm. */
  @Test
  void record_isPrintedByMonth() {
    Yard yard = new Yard(site(33.069, -115, 361, "Etc/GMT+8"));
    WeatherWords.dailyWeather(
        yard.plan,
        "date,max,min,dew,wind_ms,solar_mj\n2003-06-21,38.1,15.8,0.5,3.00,31.33\n"
            + "2003-04-15,20.6,10.0,5.1,4.40,27.96",
        "station",
        null,
        GAUGE);
    Table table = table(yard.outcome());
    assertEquals("9.6", printed(table, 5, 3));
    assertEquals("13.8", printed(table, 5, 4));
    assertEquals("5.4", printed(table, 3, 3));
    assertEquals("", printed(table, 0, 3));
  }

  /**
   * G11 and G12, Fallon, 1 July 2015, the hour from 18:00 UT: 91.80 and 49.36 °F, 61.16 ly, 3.33
   * mph at 3 m: 3.351 MJ under a clear sky, net 1.7427 MJ, 0.6065 mm of grass, 0.7202 of alfalfa
   * (WSWUP/RefET tests; longitude of that test).
   */
  @Test
  void hour_isThePublishedOne() {
    Site fallon = site(39.4575, -118.77388, 1208.5, "America/Los_Angeles");
    HourlyWeather.Hour hour =
        new HourlyWeather.Hour(
            (91.80 - 32) / 1.8,
            (49.36 - 32) / 1.8,
            Air.windAt2m(3.33 * 0.44704, 3),
            61.16 * 0.041868);
    // Standard time is eight hours behind, though people's clocks showed 11:00.
    AirOfHour air = HourlyEt.air(fallon, LocalDateTime.of(2015, 7, 1, 10, 0), hour);
    assertEquals(4.306, air.sun().radiationMj(), 0.005, "G11");
    assertEquals(3.351, air.clearSkyMj(), 0.005, "G11");
    double cloud = air.cloud(0.05);
    assertEquals(1.7427, air.netMj(cloud), 0.005, "G11");
    assertEquals(0.6065, air.mmPerHour(Surface.SHORT, cloud), 0.001, "G12");
    assertEquals(0.7202, air.mmPerHour(Surface.TALL, cloud), 0.001, "G12");
  }

  /**
   * A made-up even day by its hours and by its extremes: the two forms are built to agree within a
   * few percent over a day (ASCE-EWRI 2005, from memory: 1 to 5 %). Radiation is 0.7 of that above
   * the air in each hour.
   */
  @Test
  void wholeDay_ofHours_isNearTheDailyForm() {
    Site site = site(39.4575, -120, 1208.5, "Etc/GMT+8");
    StringBuilder text = new StringBuilder("time,temp,dew,wind_ms,solar_mj\n");
    double sum = 0;
    for (int h = 0; h < 24; h++) {
      LocalDateTime time = LocalDateTime.of(2015, 7, 1, h, 0);
      double temp = 24 + 9 * Math.cos(2 * Math.PI * (h + 0.5 - 15) / 24);
      double solar =
          0.7 * HourlyEt.air(site, time, new HourlyWeather.Hour(temp, 8, 2, 0)).sun().radiationMj();
      sum += solar;
      text.append(time).append(',').append(temp).append(",8,2,").append(solar).append('\n');
    }
    Yard yard = new Yard(site);
    WeatherWords.hourlyWeather(yard.plan, text.toString(), "made up", null, null);
    double hours =
        yard.outcome()
            .results()
            .get(YardFacts.DAILY_ET)
            .days()
            .get(LocalDate.of(2015, 7, 1))
            .millimetres();
    Yard daily = new Yard(site);
    WeatherWords.dailyWeather(
        daily.plan,
        "date,max,min,dew,wind_ms,solar_mj\n2015-07-01,33,15,8,2," + sum,
        "made up",
        null,
        null);
    double day =
        daily
            .outcome()
            .results()
            .get(YardFacts.DAILY_ET)
            .days()
            .get(LocalDate.of(2015, 7, 1))
            .millimetres();
    assertEquals(day, hours, 0.05 * day);
  }

  private static List<Double> even(double value) {
    return Collections.nCopies(12, value);
  }

  /**
   * FAO-56 example 17, Bangkok in April: 34.8 and 25.6 °C, 2.85 kPa of vapour (dew point 23.2 °C),
   * 2 m/s at 2 m, 22.65 MJ; a degree warmer each month, so that the soil takes 0.14 MJ: 5.72 mm a
   * day, 172 mm in April. Its clear sky is the simple form, and the two methods differ by up to
   * 0.15 mm a day on the same data (REF-ET outputs): 0.1 is allowed for that. Wind is given as
   * 2.674 m/s at 10 m: × 4.87 / ln(67.8 × 10 − 5.42) = 2.00.
   */
  @Test
  void month_withGivenWindAndDewPoint_isTheWorkedExample() {
    Yard yard = new Yard(site(13.73, 100.5, 2, "Asia/Bangkok"));
    List<Double> max = new java.util.ArrayList<>(even(34.8));
    List<Double> min = new java.util.ArrayList<>(even(25.6));
    max.set(2, 33.8);
    min.set(2, 24.6);
    max.set(4, 35.8);
    min.set(4, 26.6);
    NormalsWords.climateNormals(
        yard.plan,
        "Bangkok",
        even(90),
        max,
        min,
        "mm celsius",
        "FAO-56 example 17",
        even(2.674),
        Length.metres(10),
        even(23.2),
        null,
        null);
    RadiationWords.solarRadiation(yard.plan, even(22.65), "FAO-56 example 17", "mj");
    Outcome outcome = yard.outcome();
    ReferenceEt et = outcome.results().get(YardFacts.REFERENCE_ET);
    assertEquals(30 * 5.72, et.months().get(3).value().millimetres(), 30 * 0.1);
    assertTrue(et.method().contains("given wind and given dew point"), et.method());
    assertEquals(30 * 5.72, Double.parseDouble(printed(table(outcome), 3, 1)), 30 * 0.1 + 0.5);
  }

  /**
   * FAO-56 example 20, Lyon in July with wind and humidity unknown, 22.29 MJ: 4.56 mm (from
   * memory). Much rain: the dew point is the daily minimum. With little rain the climate is dry and
   * the dew point 2 °C lower, which dries the air and raises the figure.
   */
  @Test
  void unknownWindAndVapour_areTakenAsTheHandbookSays() {
    double humid = july(60);
    assertEquals(31 * 4.56, humid, 31 * 0.1);
    double dry = july(20);
    // 0.2 kPa less vapour: 0.066 × 900 / 294 × 2 × 0.2 / (0.15 + 0.066 × 1.68) ≈ 0.3, less what the
    // drier sky radiates.
    assertEquals(31 * 0.25, dry - humid, 31 * 0.1);
  }

  private static double july(double rainMm) {
    Yard yard = new Yard(site(45.72, 4.8, 200, "Europe/Paris"));
    NormalsWords.climateNormals(
        yard.plan,
        "Lyon",
        even(rainMm),
        even(26.6),
        even(14.8),
        "mm celsius",
        "test",
        null,
        null,
        null,
        null,
        null);
    RadiationWords.solarRadiation(yard.plan, even(22.29), "test", "mj");
    return yard.outcome()
        .results()
        .get(YardFacts.REFERENCE_ET)
        .months()
        .get(6)
        .value()
        .millimetres();
  }

  /** Humidity of 50 % of a mean saturation pressure of (1.705 + 3.075) / 2 = 2.39 kPa (F02). */
  @Test
  void relativeHumidity_isTurnedIntoADewPoint() {
    Yard yard = new Yard(site(45, 5, 200, "Europe/Paris"));
    NormalsWords.climateNormals(
        yard.plan,
        "x",
        even(40),
        even(24.5),
        even(15),
        "mm celsius",
        "test",
        null,
        null,
        null,
        even(50),
        null);
    double dew = yard.outcome().results().get(YardFacts.CLIMATE).air().dewPoints().get(0).celsius();
    assertEquals(2.39 / 2, Air.saturationKpa(dew), 0.002);
  }

  @Test
  void windierOrDrier_neverTakesLess() {
    double last = 0;
    for (double wind = 0.5; wind < 6; wind += 0.5) {
      double now = new AirOfDay(0.6, 300, 180, 33, 17, 12, wind, 0).mmPerDay(Surface.SHORT, 26);
      assertTrue(now > last, "wind " + wind);
      last = now;
    }
    last = 0;
    for (double dew = 20; dew > -5; dew -= 2) {
      double now = new AirOfDay(0.6, 300, 180, 33, 21, dew, 3, 0).mmPerDay(Surface.SHORT, 26);
      assertTrue(now > last, "dew point " + dew);
      last = now;
    }
    assertTrue(Radiation.netShortwave(26) > 0);
  }
}
