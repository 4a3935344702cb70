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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.climate.frost.ColdAndWarmth;
import yardloom.climate.frost.FrostWords;
import yardloom.climate.radiation.RadiationWords;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.facts.SolarRadiation;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;

class ClimateWordsTest {
  private static final SourceRef PLACE = new SourceRef("plan.groovy", 4, 1);
  private final Draft draft = atForty();
  private final PlanScope plan = new PlanScope(draft, PLACE);

  private static Draft atForty() {
    Draft draft =
        new Draft(new PlanInfo("test", "Test yard", "", "", "", "", UnitSystem.METRIC, ""));
    draft.site(
        new Site(
            "test site",
            Angle.degrees(40),
            Angle.degrees(-105),
            Length.ZERO,
            ZoneId.of("Etc/GMT+7"),
            Angle.ZERO),
        SourceRef.NONE);
    return draft;
  }

  private static void refused(ProblemCode code, String part, Runnable word) {
    PlanException e = assertThrows(PlanException.class, word::run);
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  private Outcome outcome() {
    return new Study(PluginLoader.of(List.of(new ClimatePlugin()))).of(draft.freeze());
  }

  /** A year with frost up to 10 April and from 20 October, coldest -20 °C on 1 January. */
  private static String year(int year) {
    StringBuilder text = new StringBuilder();
    for (LocalDate d = LocalDate.of(year, 1, 1); d.getYear() == year; d = d.plusDays(1)) {
      MonthDay day = MonthDay.from(d);
      boolean cold =
          day.compareTo(MonthDay.of(4, 10)) <= 0 || day.compareTo(MonthDay.of(10, 20)) >= 0;
      String min = d.getDayOfYear() == 1 ? "-20" : cold ? "-2" : "10";
      text.append(d).append(",12,").append(min).append('\n');
    }
    return text.toString();
  }

  @Test
  void statedFrost_isGivenAsAFact() {
    FrostWords.frost(plan, "04-25", "10-14", null, "county table");
    FrostDates frost = outcome().results().get(YardFacts.FROST);
    assertEquals(MonthDay.of(4, 25), frost.lastOfSpring().value());
    assertEquals(MonthDay.of(10, 14), frost.firstOfFall().value());
    assertEquals(Temperature.celsius(0), frost.limit());
    assertTrue(frost.lastOfSpring().source().cite().startsWith("county table"));
  }

  @Test
  void source_isATextOrAPublication_andNothingElse() {
    Source paper = Source.read("Freeze table", "a weather office", 2021, "table 3");
    FrostWords.frost(plan, "04-25", "10-14", null, paper);
    FrostWords.hardinessZone(plan, "6a", Source.memory("Zone map", "a map office", 2023, ""));
    assertEquals(paper, outcome().results().get(YardFacts.FROST).lastOfSpring().source());
    assertEquals(
        "Zone map, a map office, 2023 (from memory, unverified)",
        outcome().results().get(YardFacts.HARDINESS).source().cite());
    refused(
        ProblemCode.WRONG_TYPE,
        "a source is a text or a `publication`; got 400",
        () -> FrostWords.winterChill(plan, 400, 400));
    refused(ProblemCode.WRONG_TYPE, "needs a title", () -> FrostWords.winterChill(plan, 400, " "));
  }

  @Test
  void frostThatCannotBe_isRefused() {
    refused(
        ProblemCode.OUT_OF_RANGE,
        "one day",
        () -> FrostWords.frost(plan, "04-25", "04-25", null, null));
    refused(
        ProblemCode.WRONG_TYPE,
        "such as '04-15'",
        () -> FrostWords.frost(plan, "late April", "10-14", null, null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "5 °F (-15 °C)",
        () -> FrostWords.frost(plan, "04-25", "10-14", Temperature.celsius(20), null));
    FrostWords.frost(plan, "04-25", "10-14", null, null);
    refused(
        ProblemCode.DUPLICATE,
        "already given",
        () -> FrostWords.frost(plan, "04-26", "10-14", null, null));
  }

  @Test
  void zoneOutsideTheScale_isRefused() {
    refused(ProblemCode.OUT_OF_RANGE, "'1a' to '13b'", () -> zone("14a"));
    refused(ProblemCode.OUT_OF_RANGE, "'1a' to '13b'", () -> zone("6"));
    zone("13b");
    assertEquals("13b", outcome().results().get(YardFacts.HARDINESS).text());
  }

  private void zone(String text) {
    FrostWords.hardinessZone(plan, text, null);
  }

  @Test
  void weatherRecord_givesFrostZoneAndChill() {
    String text = "date,max,min\n" + year(2018) + year(2019) + year(2020);
    WeatherWords.dailyWeather(plan, text, "made up", "celsius", null);
    Outcome outcome = outcome();
    FrostDates frost = outcome.results().get(YardFacts.FROST);
    assertEquals(MonthDay.of(4, 10), frost.lastOfSpring().value());
    assertEquals(MonthDay.of(10, 20), frost.firstOfFall().value());
    Hardiness zone = outcome.results().get(YardFacts.HARDINESS);
    assertEquals("6b", zone.text(), "-20 °C is -4 °F");
    ColdAndWarmth cold = outcome.results().get(ColdAndWarmth.KEY);
    assertEquals(3, cold.years());
    assertEquals(
        List.of(Optional.of(MonthDay.of(1, 1)), Optional.empty()),
        List.of(cold.freezes().get(2).spring().get(1), cold.freezes().get(2).fall().get(1)),
        "24 °F is reached on the first of January only");
    // 2 rows in use, 6 of the record, 1 of the zone.
    assertEquals(9, table(outcome, "frost").rows().size());
    assertEquals(1, table(outcome, "chill-and-warmth").rows().size());
  }

  private static Table table(Outcome outcome, String id) {
    return outcome.tables().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void frostOfThePlan_goesBeforeThatOfAnIncludedFile(boolean includedFirst) {
    PlanScope region = new PlanScope(draft, new SourceRef("region.groovy", 2, 1));
    draft.lot(
        new Lot(
            PLACE,
            Shape.rectangle(Point.metres(0, 0), Length.metres(20), Length.metres(20)),
            List.of()));
    PlanScope own = new PlanScope(draft, new SourceRef(PLACE.file(), 9, 1));
    if (includedFirst) {
      FrostWords.frost(region, "05-20", "09-10", null, "county table");
    }
    FrostWords.frost(own, "04-25", "10-14", null, "own record");
    if (!includedFirst) {
      FrostWords.frost(region, "05-20", "09-10", null, "county table");
    }
    FrostDates frost = outcome().results().get(YardFacts.FROST);
    assertEquals(MonthDay.of(4, 25), frost.lastOfSpring().value());
    assertEquals(MonthDay.of(10, 14), frost.firstOfFall().value());
    refused(
        ProblemCode.DUPLICATE,
        "already given",
        () -> FrostWords.frost(region, "05-21", "09-10", null, null));
  }

  @Test
  void statedFrostAndZone_comeBeforeTheRecord() {
    WeatherWords.dailyWeather(plan, "date,max,min\n" + year(2018), "made up", null, null);
    FrostWords.frost(plan, "05-01", "10-01", null, null);
    zone("5a");
    assertEquals(
        MonthDay.of(5, 1), outcome().results().get(YardFacts.FROST).lastOfSpring().value());
    assertEquals("5a", outcome().results().get(YardFacts.HARDINESS).text());
  }

  @Test
  void badRecord_isRefusedWithItsLine() {
    refused(ProblemCode.WRONG_TYPE, "date, max and min", () -> weather("day,high\n"));
    refused(ProblemCode.WRONG_TYPE, "line 2", () -> weather("date,max,min\nyesterday,3,1\n"));
    refused(
        ProblemCode.WRONG_TYPE, "no temperature", () -> weather("date,max,min\n2020-01-01,x,1"));
    refused(
        ProblemCode.OUT_OF_RANGE, "check the unit", () -> weather("date,max,min\n2020-01-01,99,1"));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "above the maximum",
        () -> weather("date,max,min\n2020-01-01,1,9"));
    refused(
        ProblemCode.DUPLICATE,
        "twice",
        () -> weather("date,max,min\n2020-01-01,9,1\n2020-01-01,9,1"));
  }

  private void weather(String text) {
    WeatherWords.dailyWeather(plan, text, "made up", null, null);
  }

  @Test
  void shortRecord_givesAFindingAndNoFacts() {
    weather("date,max,min\n2020-01-01,9,1\n");
    Outcome outcome = outcome();
    assertEquals(Optional.empty(), outcome.results().find(YardFacts.FROST));
    assertTrue(
        outcome.findings().stream().map(Finding::text).anyMatch(t -> t.contains("no complete")));
  }

  /** 12 and -2 °C all winter: every hour from 1 November on lies below 45 °F but the warm ones. */
  @Test
  void weatherRecord_givesTheChillOfItsWinters() {
    weather("date,max,min\n" + year(2018));
    Outcome outcome = outcome();
    double hours = outcome.results().get(YardFacts.WINTER_CHILL).hours().value();
    assertEquals(outcome.results().get(ColdAndWarmth.KEY).chillHours().value(), hours);
    assertTrue(hours > 120 * 12 && hours < 120 * 24, "more than half of 120 days: " + hours);
  }

  @Test
  void statedChill_goesBeforeTheRecord() {
    weather("date,max,min\n" + year(2018));
    FrostWords.winterChill(plan, 437, "county office");
    Outcome outcome = outcome();
    assertEquals(437, outcome.results().get(YardFacts.WINTER_CHILL).hours().value());
    assertTrue(outcome.results().get(ColdAndWarmth.KEY).chillHours().value() > 1440);
    refused(ProblemCode.OUT_OF_RANGE, "0 to 4000", () -> FrostWords.winterChill(plan, 4001, null));
    refused(ProblemCode.DUPLICATE, "already given", () -> FrostWords.winterChill(plan, 438, null));
  }

  /**
   * The figures at 40° N are recalled from FAO-56, Annex 2, Table 2.6 (memory), whose days and fits
   * these are; the formula is held by F07.
   */
  @Test
  void radiation_fallsFromJuneToDecember() {
    SolarRadiation found = outcome().results().get(YardFacts.RADIATION);
    assertEquals(41.9, found.extraterrestrial().get(5), 0.15);
    assertEquals(13.6, found.extraterrestrial().get(11), 0.15);
    assertEquals(0.75, found.clearSky().get(5) / found.extraterrestrial().get(5), 1e-9);
  }

  @Test
  void givenRadiation_isConvertedAndPassedOn() {
    RadiationWords.solarRadiation(plan, Collections.nCopies(12, 5), "station", "kwh");
    SolarRadiation.Given given = outcome().results().get(YardFacts.RADIATION).given().orElseThrow();
    assertEquals(18.0, given.monthly().get(0), 1e-12, "1 kWh is 3.6 MJ");
    refused(ProblemCode.OUT_OF_RANGE, "12 monthly", () -> radiation(List.of(1, 2)));
    refused(ProblemCode.OUT_OF_RANGE, "45 MJ", () -> radiation(Collections.nCopies(12, 20)));
    refused(ProblemCode.OUT_OF_RANGE, "plain numbers", () -> radiation(List.of("much")));
  }

  private void radiation(List<?> months) {
    RadiationWords.solarRadiation(plan, months, "station", null);
  }
}
