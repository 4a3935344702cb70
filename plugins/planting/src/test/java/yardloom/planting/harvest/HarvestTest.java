package yardloom.planting.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Harvest;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Finding;
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
import yardloom.kernel.spi.PluginLoader;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.study.Study;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantingPlugin;
import yardloom.planting.placing.PlantingWords;

/** Harvest, yield by area and rotation. */
class HarvestTest {
  private UnitSystem units = UnitSystem.US;
  private Draft draft = draft();
  private double nextFt;

  private Draft draft() {
    return new Draft(new PlanInfo("t", "T", "", "", "", "", units, "USD"));
  }

  private BedScope bed(double widthFt, double lengthFt) {
    Shape shape =
        Shape.rectangle(
            new Point(Length.feet(nextFt), Length.ZERO),
            Length.feet(widthFt),
            Length.feet(lengthFt));
    nextFt += widthFt + 10;
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, "bed at " + nextFt),
            SourceRef.NONE,
            c -> new Element.Bed(c, shape, Element.BedUse.ANNUAL));
    return new BedScope(draft, element, SourceRef.NONE);
  }

  private void plant(double widthFt, double lengthFt, String name) {
    PlantingWords.plant(bed(widthFt, lengthFt), name, null, null, null, null, null, null);
  }

  private Outcome outcome() {
    return new Study(PluginLoader.of(List.of(new PlantingPlugin()))).of(draft.freeze());
  }

  private static Table table(Outcome outcome) {
    return outcome.tables().stream().filter(t -> t.id().equals("harvest")).findFirst().get();
  }

  private List<Finding> found(String rule) {
    return outcome().findings().stream().filter(f -> f.rule().equals(rule)).toList();
  }

  /** 100 ft of row bring 30 lb (a nursery's list) to 40 lb (a planting spreadsheet), both read. */
  @Test
  void hundredFeetOfAsparagus_bringThirtyToFortyPounds() {
    PlantingWords.plant(
        bed(3.5, 100), "asparagus", Length.inches(12), Length.inches(42), null, null, null, null);
    Harvest harvest = outcome().results().get(YardFacts.HARVEST);
    assertEquals(30, harvest.low().value().pounds(), 1e-6);
    assertEquals(40, harvest.high().value().pounds(), 1e-6);
    assertTrue(harvest.leftOut().isEmpty());
  }

  /** Three rows 14 in apart do not bring three times what a row brings. */
  @Test
  void closeRows_bringLessThanOpenOnes() {
    PlantingWords.plant(
        bed(3.5, 100), "asparagus", Length.inches(12), Length.inches(14), null, null, null, null);
    Harvest harvest = outcome().results().get(YardFacts.HARVEST);
    assertEquals(30 * (1 + 2 * 14 / 42.0), harvest.low().value().pounds(), 1e-6);
  }

  /** 16 bushes of 5 to 8 lb (University of Idaho Extension, 2012); sage is picked by the sprig. */
  @Test
  void unknownYield_isBlankAndNamed() {
    PlantingWords.plant(bed(4, 64), "red currant", Length.feet(4), null, null, null, null, null);
    plant(4, 8, "sage");
    Outcome outcome = outcome();
    Harvest harvest = outcome.results().get(YardFacts.HARVEST);
    assertEquals(80, harvest.low().value().pounds(), 1e-6);
    assertEquals(128, harvest.high().value().pounds(), 1e-6);
    assertEquals(List.of("sage"), harvest.leftOut());
    Table table = table(outcome);
    assertEquals(Cell.BLANK, table.rows().get(1).get(2));
    assertEquals("0.31–0.50", table.rows().get(0).get(4).value().get());
    assertTrue(table.notes().toString().contains("the kitchen asks, and not weighed: sage."));
    assertFalse(table.notes().toString().contains("Left out"), "the sprigs are said");
    assertEquals("full crop in year 3–4", table.rows().get(0).get(5).value().get());
  }

  /** The same in kilograms: 80 lb are 36 kg, 0.31 lb/sq ft 1.53 kg/m² (80 / 256 × 4.882428). */
  @Test
  void metricPlan_showsKilograms() {
    units = UnitSystem.METRIC;
    draft = draft();
    PlantingWords.plant(bed(4, 64), "red currant", Length.feet(4), null, null, null, null, null);
    Table table = table(outcome());
    TableFormat format = new TableFormat(units, "");
    assertEquals("36", format.text(table.columns().get(2), table.rows().get(0).get(2)));
    assertEquals("From, kg", format.header(table.columns().get(2)));
    assertEquals("1.53–2.44", table.rows().get(0).get(4).value().get());
  }

  /** P14: asparagus brings less than a mixed garden, close tomatoes more, red currants enough. */
  @Test
  void yieldOutsideWhatGardensBring_isNoted() {
    plant(4, 64, "red currant");
    assertTrue(found("planting.yield").isEmpty());
    plant(12, 60, "asparagus");
    Finding little = found("planting.yield").get(0);
    assertTrue(little.text().contains("0.25 to 1.86 lb/sq ft"));
    assertTrue(little.advice().startsWith("count on no more"));
    draft = draft();
    PlantingWords.plant(bed(4, 12), "tomato", Length.feet(1.5), null, null, null, null, null);
    assertTrue(found("planting.yield").get(0).advice().startsWith("count on less"));
  }

  @Test
  void planWithoutYields_hasNoHarvest() {
    plant(4, 8, "sage");
    assertTrue(outcome().results().find(YardFacts.HARVEST).isEmpty());
    assertTrue(found("planting.yield").isEmpty());
    assertEquals(0, table(outcome()).totals());
  }

  /** Usually three years (Cornell Cooperative Extension, 2021), so a third of the ground each. */
  @Test
  void familyOnMoreThanAThird_cannotRotate() {
    plant(4, 8, "tomato");
    plant(4, 8, "potato");
    plant(4, 8, "kale");
    plant(4, 80, "red currant");
    Finding note = found("planting.rotation").get(0);
    assertTrue(note.text().startsWith("Solanaceae (potato, tomato) takes 67 %"), note.text());
    assertTrue(!note.text().contains("Brassicaceae") && !note.text().contains("Grossulariaceae"));
    plant(4, 8, "carrot");
    plant(4, 8, "bush bean");
    plant(4, 8, "lettuce");
    assertTrue(found("planting.rotation").isEmpty());
  }
}
