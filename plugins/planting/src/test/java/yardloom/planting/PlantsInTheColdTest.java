package yardloom.planting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
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
    PlantingWords.plant(bed, plant, null, null, null, null, null);
  }

  private <T> Outcome with(FactKey<T> key, T value) {
    List<YardPlugin> plugins =
        List.of(new PlantingPlugin(), new Giver(Set.of(key), (plan, out) -> out.give(key, value)));
    return new Study(PluginLoader.of(plugins)).of(draft.freeze());
  }

  /** Gooseberries grow in zones 3 to 8 (web page on gooseberries, read). */
  @ParameterizedTest(name = "zone {0}")
  @CsvSource({"2, WARNING", "3, ", "8, ", "9, NOTE"})
  void plantOutsideItsZones_isFound(int zone, Severity expected) {
    bed("gooseberry");
    Hardiness hardiness = new Hardiness(zone, false, Optional.empty(), Source.plan("map"));
    List<Severity> found =
        with(YardFacts.HARDINESS, hardiness).findings().stream()
            .filter(f -> f.rule().equals("planting.hardiness"))
            .map(Finding::severity)
            .toList();
    assertEquals(expected == null ? List.of() : List.of(expected), found);
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
