package yardloom.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.climate.frost.ColdAndWarmth;
import yardloom.climate.frost.FrostWords;
import yardloom.climate.normals.ClimateList;
import yardloom.climate.normals.NormalsWords;
import yardloom.climate.weather.RainWords;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.ClimateNormals;
import yardloom.facts.DailyRain;
import yardloom.facts.FrostDates;
import yardloom.facts.FrostSaid;
import yardloom.facts.ReferenceEt;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.spi.Catalogue;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;

/** From words of the climate to its facts, worked by hand. */
class ClimateByHandTest {
  private static final SourceRef WORK = new SourceRef("plan.groovy", 12, 1);

  /** Published normals of San Francisco, °F (Western Regional Climate Center). */
  private static final double[] SAN_FRANCISCO = {
    51.1, 54.4, 54.9, 56.0, 56.6, 58.4, 59.1, 60.1, 62.3, 62.0, 57.2, 51.7
  };

  private final Draft draft =
      new Draft(new PlanInfo("test", "Test yard", "", "", "", "", UnitSystem.METRIC, ""));
  private final PlanScope plan = new PlanScope(draft, new SourceRef("plan.groovy", 4, 1));

  private static List<Double> row(double value) {
    return Collections.nCopies(12, value);
  }

  private void site(double latitude) {
    draft.site(
        new Site(
            "here",
            Angle.degrees(latitude),
            Angle.degrees(10),
            Length.ZERO,
            ZoneId.of("UTC"),
            Angle.ZERO),
        SourceRef.NONE);
  }

  private Outcome outcome(FrostSaid... said) {
    Giver work =
        new Giver(
            Set.of(YardFacts.FROST_SAID),
            (p, out) -> List.of(said).forEach(s -> out.give(YardFacts.FROST_SAID, s)));
    return new Study(PluginLoader.of(List.of(new ClimatePlugin(), work))).of(draft.freeze());
  }

  private void normals(
      String units,
      List<?> rain,
      List<?> max,
      List<?> min,
      List<?> wind,
      Length height,
      List<?> dew,
      List<?> humidity,
      List<?> wet) {
    NormalsWords.climateNormals(
        plan, "our town", rain, max, min, units, "a service", wind, height, dew, humidity, wet);
  }

  private ClimateNormals climate() {
    return outcome().results().get(YardFacts.CLIMATE);
  }

  private static void refused(ProblemCode code, String part, Executable word) {
    PlanException e = assertThrows(PlanException.class, word);
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  /**
   * FAO-56, equation 47 and its example 14: 3.2 m/s at 10 m are 2.4 m/s at 2 m. In miles an hour,
   * 3.2 m/s are 7.158.
   */
  @ParameterizedTest
  @CsvSource({"mm celsius, 3.2, 50, 20, 10", "inch fahrenheit, 7.158, 2, 68, 50"})
  void windAtTenMetres_isReducedToTwo(
      String units, double wind, double rain, double max, double min) {
    normals(units, row(rain), row(max), row(min), row(wind), Length.metres(10), null, null, null);
    assertEquals(2.4, climate().air().windMs().get(7), 0.01);
  }

  /**
   * FAO-56, equation 19: 68 % on a day of 25 and 18 °C (the days of its example 5, whose vapour
   * pressures are 3.168 and 2.064 kPa) are 0.68 × 2.616 = 1.779 kPa, so a dew point of (116.91 +
   * 237.3 ln 1.779) / (16.78 - ln 1.779) = 15.65 °C (its equation for the dew point).
   */
  @Test
  void humidity_becomesADewPoint() {
    normals("mm celsius", row(50), row(25), row(18), null, null, null, row(68), null);
    assertEquals(15.65, climate().air().dewPoints().get(3).celsius(), 0.01);
  }

  @Test
  void dewPointsAndWetDays_areAsGiven() {
    List<Double> dew = DoubleStream.iterate(1, d -> d + 0.5).limit(12).boxed().toList();
    List<Double> wet = DoubleStream.iterate(3, d -> d + 2).limit(12).boxed().toList();
    normals("mm celsius", row(50), row(25), row(18), null, null, dew, null, wet);
    ClimateNormals.Air air = climate().air();
    assertEquals(6.5, air.dewPoints().get(11).celsius(), 1e-9);
    assertEquals(wet, air.wetDays());
    assertTrue(air.windMs().isEmpty());
  }

  @Test
  void airThatCannotBe_isRefusedWithRowAndMonth() {
    List<Double> rain = row(50);
    List<Double> max = row(25);
    List<Double> min = row(15);
    refused(
        ProblemCode.CONTRADICTION,
        "give one of them",
        () -> normals("mm celsius", rain, max, min, null, null, row(9), row(60), null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "0 to 20 m/s",
        () -> normals("mm celsius", rain, max, min, row(20.1), null, null, null, null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "0 to 45 mph",
        () -> normals("inch fahrenheit", rain, row(77), row(59), row(46), null, null, null, null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "`wind:` of Jan",
        () -> normals("mm celsius", rain, max, min, row(-0.1), null, null, null, null));
    refused(
        ProblemCode.CONTRADICTION,
        "is above the mean temperature",
        () -> normals("mm celsius", rain, max, min, null, null, row(20.1), null, null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "1 to 100 percent",
        () -> normals("mm celsius", rain, max, min, null, null, null, row(0.9), null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "1 to 100 percent",
        () -> normals("mm celsius", rain, max, min, null, null, null, row(100.1), null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "`wetDays:` of Feb",
        () -> normals("mm celsius", rain, max, min, null, null, null, null, row(29)));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "above 0, up to the days of the month",
        () -> normals("mm celsius", rain, max, min, null, null, null, null, row(0)));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "0, since no rain is given",
        () -> normals("mm celsius", row(0), max, min, null, null, null, null, row(1)));
  }

  /** The ends: calm, 20 m/s, dew at the mean, 1 and 100 %, as many wet days as February has. */
  @Test
  void endsOfTheRanges_areAllowed() {
    List<Double> calm = DoubleStream.iterate(0, d -> d == 0 ? 20 : 0).limit(12).boxed().toList();
    normals("mm celsius", row(50), row(25), row(15), calm, null, row(20), null, row(28));
    assertEquals(20, climate().air().windMs().get(1), 0.05);
    assertEquals(28.0, climate().air().wetDays().get(1));
  }

  @Test
  void humidityMayBeSaturated_andRainlessMonthsDry() {
    List<Double> wide = DoubleStream.iterate(1, d -> 101 - d).limit(12).boxed().toList();
    normals("mm celsius", row(0), row(25), row(25), null, null, null, wide, row(0));
    assertEquals(25, climate().air().dewPoints().get(1).celsius(), 0.05);
  }

  @Test
  void oneClimate_isGivenOnce() {
    NormalsWords.climate(plan, "urbana-il");
    refused(ProblemCode.DUPLICATE, "climate", () -> NormalsWords.climate(plan, "urbana-il"));
    refused(
        ProblemCode.UNKNOWN_WORD,
        "urbana-il",
        () -> {
          Draft other = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, ""));
          NormalsWords.climate(new PlanScope(other, SourceRef.NONE), "urbana-li");
        });
  }

  /** Rain, hottest and coldest of the shipped rows; °F and °C agree. */
  @Test
  void listOfClimates_saysRainAndExtremes() {
    NormalsWords.climate(plan, "urbana-il");
    ClimateNormals normals = climate();
    Catalogue.Row row =
        ClimateList.climates().rows().stream()
            .filter(r -> r.name().equals("urbana-il"))
            .findFirst()
            .orElseThrow();
    double mm = normals.months().stream().mapToDouble(m -> m.rain().millimetres()).sum();
    assertEquals(
        String.format(java.util.Locale.ROOT, "%.1f in (%.0f mm) a year", mm / 25.4, mm),
        row.traits().get("rain"));
    double hot =
        normals.months().stream()
            .mapToDouble(m -> m.dailyMax().orElseThrow().celsius())
            .max()
            .orElseThrow();
    double cold =
        normals.months().stream()
            .mapToDouble(m -> m.dailyMin().orElseThrow().celsius())
            .min()
            .orElseThrow();
    assertEquals(both(hot), row.traits().get("hottest"));
    assertEquals(both(cold), row.traits().get("coldest"));
    assertEquals(normals.place(), row.traits().get("place"));
    List<String> names = ClimateList.climates().rows().stream().map(Catalogue.Row::name).toList();
    assertEquals(names.stream().sorted().toList(), names);
    assertTrue(row.traits().get("source").length() > 10);
  }

  private static String both(double celsius) {
    return String.format(java.util.Locale.ROOT, "%.0f °F (%.0f °C)", celsius * 1.8 + 32, celsius);
  }

  private static FrostSaid said(String last, String first) {
    return new FrostSaid(
        Optional.ofNullable(last).map(d -> MonthDay.parse("--" + d)),
        Optional.ofNullable(first).map(d -> MonthDay.parse("--" + d)),
        WORK);
  }

  /** `work` may say both days; half of them without `frost` is no year. */
  @Test
  void frostSaidWithTheWork_isThatOfThePlan() {
    FrostDates frost = outcome(said("04-20", "10-15")).results().get(YardFacts.FROST);
    assertEquals(MonthDay.of(4, 20), frost.lastOfSpring().value());
    assertEquals(MonthDay.of(10, 15), frost.firstOfFall().value());
    assertEquals(0, frost.limit().celsius());
    assertTrue(outcome(said("04-20", null)).results().find(YardFacts.FROST).isEmpty());
    assertTrue(outcome(said(null, "10-15")).results().find(YardFacts.FROST).isEmpty());
  }

  /** What both say must agree; what one leaves out is the other's, with its limit. */
  @Test
  void frostSaidTwice_mustAgree() {
    FrostWords.frost(plan, "04-25", "10-14", Temperature.fahrenheit(28), "county table");
    FrostDates frost = outcome(said("04-25", null)).results().get(YardFacts.FROST);
    assertEquals(MonthDay.of(10, 14), frost.firstOfFall().value());
    assertEquals(28, frost.limit().fahrenheit(), 1e-9);
    PlanException last = assertThrows(PlanException.class, () -> outcome(said("04-26", "10-14")));
    assertEquals(ProblemCode.CONTRADICTION, last.problems().get(0).code());
    assertEquals(WORK, last.problems().get(0).place());
    assertTrue(
        last.getMessage().contains("the last frost is 26 Apr here and 25 Apr by `frost`"),
        last.getMessage());
    PlanException first = assertThrows(PlanException.class, () -> outcome(said("04-25", "10-13")));
    assertTrue(
        first.getMessage().contains("the first frost is 13 Oct here and 14 Oct by `frost`"),
        first.getMessage());
  }

  private void sanFrancisco(double nightF) {
    List<Double> max = DoubleStream.of(SAN_FRANCISCO).map(m -> m + 3).boxed().toList();
    List<Double> min =
        DoubleStream.of(SAN_FRANCISCO).map(m -> m == 51.1 ? nightF : m - 3).boxed().toList();
    normals("inch fahrenheit", row(2), max, min, null, null, null, null, null);
  }

  /**
   * The days of the formula's own test: warm from 18 March to 27 November. Nights of the coldest
   * month must be 7 °C, 44.6 °F, or milder.
   */
  @ParameterizedTest
  @CsvSource({"48.1, true", "44.6, true", "44.5, false"})
  void mildYear_isWarmFromMarchToNovember(double nightF, boolean mild) {
    sanFrancisco(nightF);
    Optional<WarmSeason> warm = outcome().results().find(YardFacts.WARM_SEASON);
    assertEquals(mild, warm.isPresent());
    if (mild) {
      assertEquals(MonthDay.of(3, 18), warm.get().begins().value());
      assertEquals(MonthDay.of(11, 27), warm.get().ends().value());
      assertEquals(55, warm.get().limit().fahrenheit(), 1e-9);
    }
    FrostWords.frost(plan, "01-25", "12-24", null, "county table");
    assertEquals(
        MonthDay.of(3, 18),
        outcome().results().get(YardFacts.WARM_SEASON).begins().value(),
        "where frost is said, tender plants wait for warmth too");
  }

  /** Warm all year: from the middle of the month after the coldest to that of the one before. */
  @Test
  void yearWithoutACoolMonth_restsAboutItsColdest() {
    List<Double> mean = DoubleStream.iterate(20, t -> t + 0.5).limit(12).boxed().toList();
    normals("mm celsius", row(50), mean, mean, null, null, null, null, null);
    WarmSeason warm = outcome().results().get(YardFacts.WARM_SEASON);
    assertEquals(MonthDay.of(2, 15), warm.begins().value());
    assertEquals(MonthDay.of(12, 15), warm.ends().value());
  }

  /** Without ranges of temperature or a site there is no thirst of the air; with both there is. */
  @Test
  void referenceEt_needsASite() {
    normals("mm celsius", row(50), row(25), row(15), null, null, null, null, null);
    assertTrue(outcome().results().find(YardFacts.REFERENCE_ET).isEmpty());
    site(45);
    ReferenceEt et = outcome().results().get(YardFacts.REFERENCE_ET);
    assertTrue(et.method().startsWith("Hargreaves"), et.method());
    // 0.0023 × (20 + 17.8) × √10 × Ra of July at 45° N, 40.5 MJ (FAO-56, Annex 2, Table 2.6,
    // recalled) / 2.45, × 31 days.
    assertEquals(
        0.0023 * 37.8 * Math.sqrt(10) * 40.5 / 2.45 * 31,
        et.months().get(6).value().millimetres(),
        2);
  }

  private static String rain(int days) {
    StringBuilder text = new StringBuilder("date,rain_mm\n");
    for (int d = 0; d < days; d++) {
      text.append(LocalDate.of(2011, 1, 1).plusDays(d)).append(',').append(d % 7).append('\n');
    }
    return text.toString();
  }

  /** A year of rain, 0 to 6 mm by turns, is passed on with its station; 364 days are no year. */
  @Test
  void dailyRain_isAFact() {
    RainWords.dailyRain(plan, rain(365), "the airport", "a service");
    DailyRain rain = outcome().results().get(YardFacts.DAILY_RAIN);
    assertEquals(365, rain.days().size());
    assertEquals(5, rain.days().get(12).rain().millimetres(), 1e-9);
    assertTrue(rain.source().cite().contains("the airport, a service"), rain.source().cite());
    refused(
        ProblemCode.DUPLICATE,
        "already given",
        () -> RainWords.dailyRain(plan, rain(365), "other", "a service"));
    PlanScope other =
        new PlanScope(
            new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "")),
            new SourceRef("plan.groovy", 4, 1));
    PlanException e =
        assertThrows(PlanException.class, () -> RainWords.dailyRain(other, rain(364), "x", "y"));
    assertTrue(e.getMessage().startsWith("plan.groovy:4:1"), e.getMessage());
  }

  private static String record(int year, double lowest) {
    StringBuilder text = new StringBuilder("date,max,min\n");
    for (LocalDate d = LocalDate.of(year, 1, 1); d.getYear() == year; d = d.plusDays(1)) {
      text.append(d).append(",22,").append(d.getDayOfYear() == 10 ? lowest : 21).append('\n');
    }
    return text.toString();
  }

  /**
   * Zones run from -60 °F, -51.1 °C, to 70 °F, 21.1 °C, in fives of °F: what lies outside has
   * words.
   */
  @ParameterizedTest
  @CsvSource({"-51.2, colder than zone 1a", "-51.1, 1a", "-20, 6b", "20.9, 13b"})
  void lowestOfARecord_isItsZone_orSaysOnWhichSideItLies(double lowest, String zone) {
    WeatherWords.dailyWeather(plan, record(2018, lowest), "made up", null, null);
    assertEquals(zone, outcome().results().get(ColdAndWarmth.KEY).zone().value());
  }

  @Test
  void recordThatNeverCools_isWarmerThanAllZones() {
    WeatherWords.dailyWeather(
        plan, record(2018, 21.2).replace(",21.0\n", ",22.0\n"), "x", null, null);
    assertEquals("warmer than 13b", outcome().results().get(ColdAndWarmth.KEY).zone().value());
  }

  @ParameterizedTest
  @CsvSource({
    "wind_ms, 60, true",
    "wind_ms, 60.1, false",
    "wind_ms, -0.1, false",
    "wind_mph, 134.2, true",
    "wind_mph, 134.3, false",
    "solar_mj, 45, true",
    "solar_mj, 45.1, false",
    "solar_kwh, 12.5, true",
    "solar_kwh, 12.6, false"
  })
  void windAndSunOfADay_haveTheirLimits(String column, String value, boolean allowed) {
    String text = "date,max,min," + column + "\n2011-01-01,9,1," + value + "\n";
    if (allowed) {
      WeatherWords.dailyWeather(plan, text, "x", null, null);
    } else {
      refused(
          ProblemCode.OUT_OF_RANGE,
          "got " + column + " " + value,
          () -> WeatherWords.dailyWeather(plan, text, "x", null, null));
    }
  }

  /** -90 °C and 60 °C, -130 and 140 °F, are the ends of what a thermometer may say. */
  @ParameterizedTest
  @CsvSource({
    "celsius, 60, -90, true",
    "celsius, 60.1, 0, false",
    "celsius, 0, -90.1, false",
    "fahrenheit, 140, -130, true",
    "fahrenheit, 140.2, 0, false",
    "fahrenheit, 0, -130.2, false"
  })
  void temperaturesOfADay_haveTheirLimits(String units, String max, String min, boolean allowed) {
    String text = "date,max,min\n2011-01-01," + max + "," + min + "\n";
    if (allowed) {
      WeatherWords.dailyWeather(plan, text, "x", units, null);
    } else {
      refused(
          ProblemCode.OUT_OF_RANGE,
          "temperatures run from -90 to 60 °C",
          () -> WeatherWords.dailyWeather(plan, text, "x", units, null));
    }
  }

  /** A record of nine years is too short for the date of one year in ten. */
  @ParameterizedTest
  @CsvSource({"9, true", "10, false"})
  void shortRecord_isSaidToBe(int years, boolean few) {
    StringBuilder text = new StringBuilder("date,max,min\n");
    for (int year = 2001; year < 2001 + years; year++) {
      text.append(record(year, -5).substring("date,max,min\n".length()));
    }
    WeatherWords.dailyWeather(plan, text.toString(), "made up", null, null);
    String notes =
        outcome().tables().stream()
            .filter(t -> t.id().equals("frost"))
            .findFirst()
            .orElseThrow()
            .notes()
            .toString();
    assertTrue(notes.contains(years + " complete years"), notes);
    assertEquals(few, notes.contains("too few for the 1 in 10"), notes);
  }

  /**
   * Without normals the air holds 1 kPa of vapour: 0.14 × 1 × 101.3 + 2.1 mm of water at the sea
   * (ASCE-EWRI, 2005, equation D.3).
   */
  @Test
  void airWithoutNormals_holdsOneKilopascal() {
    site(40);
    assertEquals(
        0.14 * 101.3 + 2.1,
        outcome().results().get(YardFacts.RADIATION).skies().get(3).waterMm(),
        0.01);
  }
}
