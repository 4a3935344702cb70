package yardloom.planting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.ClimateNormals;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
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
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantingWords;
import yardloom.planting.window.formula.PlantingTime;

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
    PlantingWords.plant(bed, plant, null, null, null, null);
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

  @Test
  void timesToPlant_followTheFrost() {
    bed("tomato");
    bed("kale");
    FrostDates frost =
        new FrostDates(
            Derived.given(MonthDay.of(4, 25), "last", SourceRef.NONE),
            Derived.given(MonthDay.of(10, 14), "first", SourceRef.NONE),
            Temperature.celsius(0));
    Table table =
        with(YardFacts.FROST, frost).tables().stream()
            .filter(t -> t.id().equals("planting-times"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        List.of(List.of("kale", "28 Mar", "5 Aug"), List.of("tomato", "9 May", "")),
        table.rows().stream()
            .map(r -> r.stream().map(c -> c.value().orElse("").toString()).toList())
            .toList());
  }

  @Test
  void southernFrost_runsThroughTheTurnOfTheYear() {
    PlantingTime.Times times =
        PlantingTime.of(Plant.Season.DECIDUOUS, MonthDay.of(9, 20), MonthDay.of(5, 10));
    assertEquals(MonthDay.of(8, 9), times.springFrom());
    assertEquals(Optional.of(MonthDay.of(3, 29)), times.fallUntil());
  }
}
