package yardloom.planting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.facts.PlantingWindow;
import yardloom.facts.Stand;
import yardloom.facts.WinterChill;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.spi.Giver;
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.spi.YardPlugin;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.PlantingWords;

/** Hardiness zones and times to plant. */
class PlantsInTheColdTest {
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));

  private void bed(String plant) {
    Shape shape = Shape.rectangle(Point.metres(0, 0), Length.metres(4), Length.metres(4));
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, plant + " bed"),
            SourceRef.NONE,
            c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL));
    BedScope bed = new BedScope(draft, element, SourceRef.NONE);
    PlantingWords.plant(bed, plant, null, null, null, null, null, null);
  }

  private <T> Outcome with(FactKey<T> key, T value) {
    List<YardPlugin> plugins =
        List.of(new PlantingPlugin(), new Giver(Set.of(key), (plan, out) -> out.give(key, value)));
    return new Study(PluginLoader.of(plugins)).of(draft.freeze());
  }

  /**
   * Gooseberries grow from zone 3 on (web page on gooseberries, read), red currants down to -31 °F
   * (University of Idaho Extension, 2012, read): zone 4a ends at -30 °F, so zone 3. What a summer
   * is like no zone tells.
   */
  @ParameterizedTest(name = "{0}, zone {1}")
  @CsvSource({
    "gooseberry, 2, true",
    "gooseberry, 3, false",
    "gooseberry, 12, false",
    "red currant, 2, true",
    "red currant, 3, false",
    "pomegranate, 7, true",
    "pomegranate, 8, false"
  })
  void plantTooTenderForTheZone_isFound(String plant, int zone, boolean expected) {
    bed(plant);
    Hardiness hardiness = new Hardiness(zone, false, Optional.empty(), Source.plan("map"));
    List<Severity> found = severities("planting.hardiness", with(YardFacts.HARDINESS, hardiness));
    assertEquals(expected ? List.of(Severity.WARNING) : List.of(), found);
  }

  /** Strawberries ask for 200 to 400 h, rhubarb for 500 h or more (a nursery's page, read). */
  @ParameterizedTest(name = "{0}, {1} h")
  @CsvSource({
    "garden strawberry, 199, WARNING",
    "garden strawberry, 200, NOTE",
    "garden strawberry, 399, NOTE",
    "garden strawberry, 400, ",
    "rhubarb, 499, WARNING",
    "rhubarb, 500, "
  })
  void plantThatLacksChill_isFound(String plant, double hours, Severity expected) {
    bed(plant);
    WinterChill chill = new WinterChill(Derived.given(hours, "chill", SourceRef.NONE));
    List<Severity> found = severities("planting.chill", with(YardFacts.WINTER_CHILL, chill));
    assertEquals(expected == null ? List.of() : List.of(expected), found);
  }

  /** Raspberries suffer where days reach 95 °F (Utah State University Extension, read). */
  @ParameterizedTest(name = "July {0} °F")
  @CsvSource({"94, false", "96, true"})
  void raspberriesInTheHeat_areFoundWhateverTheWinter(double july, boolean expected) {
    bed("red raspberry");
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(
          new ClimateNormals.Month(
              Length.millimetres(10 + m),
              Temperature.fahrenheit(60),
              Optional.of(Temperature.fahrenheit(m == 6 ? july : 50 + m)),
              Optional.of(Temperature.fahrenheit(40))));
    }
    Source source = Source.plan("normals");
    ClimateNormals climate = new ClimateNormals("t", months, source, source);
    assertEquals(
        expected ? List.of(Severity.NOTE) : List.of(),
        severities("planting.heat", with(YardFacts.CLIMATE, climate)));
  }

  private static List<Severity> severities(String rule, Outcome outcome) {
    return outcome.findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(Finding::severity)
        .toList();
  }

  /**
   * Worked yard: last frost 25 April, first 14 October, hot summers and frozen winters. Kale from 4
   * weeks before the last frost (web page, read) to 2 after it, and again from 14 to 10 weeks
   * before the first; potatoes 2 weeks before to 4 after; tomatoes 2 weeks after it until 145 days
   * of crop (FAO-56 Table 11) before the first frost; raspberries bare root from 6 weeks before to
   * the last frost, in pots to 8 weeks after and in fall from 6 weeks before the first to 3 after
   * it (September to November: web page, read).
   */
  @Test
  void timesToPlant_areThoseOfEachKind() {
    bed("tomato");
    bed("kale");
    bed("potato");
    bed("red raspberry");
    assertEquals(
        List.of(
            List.of("kale", "sow or set out", "28 Mar", "9 May"),
            List.of("kale", "second sowing", "8 Jul", "5 Aug"),
            List.of("potato", "sow or set out", "11 Apr", "23 May"),
            List.of("red raspberry", "bare root", "14 Mar", "25 Apr"),
            List.of("red raspberry", "potted", "14 Mar", "20 Jun"),
            List.of("red raspberry", "potted, in fall", "2 Sep", "4 Nov"),
            List.of("tomato", "set out", "9 May", "22 May")),
        times(with(YardFacts.FROST, frost(MonthDay.of(4, 25), MonthDay.of(10, 14)))));
  }

  /** In Seattle's climate kale goes on all summer and bare roots go in all winter. */
  @Test
  void timesToPlant_whereSummersAreCoolAndWintersOpen_areLonger() {
    bed("kale");
    bed("red raspberry");
    List<List<String>> times = times(coolAndOpen());
    assertEquals(List.of("kale", "sow or set out", "15 Feb", "6 Sep"), times.get(0));
    assertEquals(List.of("red raspberry", "bare root", "29 Nov", "15 Mar"), times.get(1));
  }

  /**
   * From 2 weeks before 15 March (garden services page, semi-hardy vegetables, read) to 10 after it
   * (from memory): 16 + 30 + 24 days.
   */
  @Test
  void potatoesWhereSummersAreCool_arePlantedUntilLateMay() {
    bed("potato");
    assertEquals(
        List.of(List.of("potato", "sow or set out", "1 Mar", "24 May")), times(coolAndOpen()));
  }

  /** Days of more than 80 °F, 26.7 °C, stop cool-season vegetables (page on them, read). */
  @ParameterizedTest
  @CsvSource({"26.6, 6 Sep", "26.8, 29 Mar"})
  void kaleInHotSummers_isNotSownOn(double dayC, String until) {
    bed("kale");
    // Until ten weeks before 15 November, or two weeks after 15 March.
    assertEquals(List.of("kale", "sow or set out", "15 Feb", until), times(open(dayC)).get(0));
  }

  private Outcome coolAndOpen() {
    return open(20);
  }

  private Outcome open(double dayC) {
    List<ClimateNormals.Month> months =
        Collections.nCopies(
            12,
            new ClimateNormals.Month(
                Length.millimetres(50),
                Temperature.celsius(8),
                Optional.of(Temperature.celsius(dayC)),
                Optional.of(Temperature.celsius(4))));
    Source source = Source.plan("normals");
    FrostDates frost = frost(MonthDay.of(3, 15), MonthDay.of(11, 15));
    Giver giver =
        new Giver(
            Set.of(YardFacts.FROST, YardFacts.CLIMATE),
            (plan, out) -> {
              out.give(YardFacts.FROST, frost);
              out.give(YardFacts.CLIMATE, new ClimateNormals("t", months, source, source));
            });
    return new Study(PluginLoader.of(List.of(new PlantingPlugin(), giver))).of(draft.freeze());
  }

  /** A southern spring ends in September; its fall is in May. */
  @Test
  void southernFrost_runsThroughTheTurnOfTheYear() {
    bed("chives");
    List<List<String>> times =
        times(with(YardFacts.FROST, frost(MonthDay.of(9, 20), MonthDay.of(5, 10))));
    assertEquals(List.of("chives", "crowns or potted", "9 Aug", "15 Nov"), times.get(0));
    assertEquals(List.of("chives", "potted, in fall", "29 Mar", "10 May"), times.get(1));
  }

  /** Across New Year too: from 29 November to 15 March. */
  @Test
  void windowAcrossNewYear_holdsItsEndsAndFindsItsNextDay() {
    PlantingWindow window =
        new PlantingWindow(
            "t",
            yardloom.facts.work.WorkPhase.PLANT,
            List.of(
                new PlantingWindow.Period(
                    "bare root",
                    Derived.given(MonthDay.of(11, 29), "from", SourceRef.NONE),
                    Derived.given(MonthDay.of(3, 15), "until", SourceRef.NONE))));
    assertTrue(window.on(LocalDate.of(2027, 1, 1)).isPresent());
    assertTrue(window.on(LocalDate.of(2027, 3, 15)).isPresent());
    assertTrue(window.on(LocalDate.of(2026, 11, 29)).isPresent());
    assertTrue(window.on(LocalDate.of(2027, 3, 16)).isEmpty());
    assertTrue(window.on(LocalDate.of(2026, 11, 28)).isEmpty());
    assertEquals(LocalDate.of(2026, 11, 29), window.next(LocalDate.of(2026, 3, 16)));
  }

  @Test
  void everyAnnual_hasStagesThatItsWaterAndItsSowingFollow() {
    for (Plant plant : PlantCatalogue.shipped().all()) {
      if (plant.growth().season().isAnnual()) {
        assertTrue(plant.draw().crop().stages().isPresent(), plant.name());
      }
    }
  }

  /**
   * Worked by hand: tomatoes set out on 9 May (two weeks after 25 April) stand 145 days, to 30
   * September, and draw nothing in April and October. In May 23 of 31 days at Kc 0.6 of the first
   * 30: 0.445; in July days 54 to 84 of the crop: 0.6 + 0.55 × (d − 30) / 40 up to day 70, then
   * 1.15.
   */
  @Test
  void annuals_drawWaterFromTheirPlantingOn() {
    bed("tomato");
    FrostDates frost = frost(MonthDay.of(4, 25), MonthDay.of(10, 14));
    Stand stand = with(YardFacts.FROST, frost).results().all(YardFacts.STANDS).get(0);
    assertEquals(0, stand.thirst().kc().get(3));
    assertEquals(0.6 * 23 / 31, stand.thirst().kc().get(4), 1e-9);
    double july = 0;
    for (int day = 53; day < 84; day++) {
      july += Math.min(1.15, 0.6 + 0.55 * (day + 0.5 - 30) / 40);
    }
    assertEquals(july / 31, stand.thirst().kc().get(6), 1e-9);
    assertTrue(stand.thirst().kc().get(8) > 0.8 && stand.thirst().kc().get(8) < 1.15);
    assertEquals(0, stand.thirst().kc().get(9));
    String cited = stand.thirst().kcSource().cite();
    assertTrue(cited.contains("planted on 9 May, 145 days"), cited);
  }

  private static FrostDates frost(MonthDay last, MonthDay first) {
    return new FrostDates(
        Derived.given(last, "last", SourceRef.NONE),
        Derived.given(first, "first", SourceRef.NONE),
        Temperature.celsius(0));
  }

  private static List<List<String>> times(Outcome outcome) {
    Table table =
        outcome.tables().stream()
            .filter(t -> t.id().equals("planting-times"))
            .findFirst()
            .orElseThrow();
    TableFormat format = new TableFormat(UnitSystem.US, "");
    return table.rows().stream()
        .map(
            r ->
                IntStream.range(0, r.size())
                    .mapToObj(i -> format.text(table.columns().get(i), r.get(i)))
                    .toList())
        .toList();
  }
}
