package yardloom.planting.mulch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BorneDepth;
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
import yardloom.kernel.study.Study;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.planting.PlantingPlugin;
import yardloom.planting.placing.PlantingWords;

class BorneDepthTest {
  /**
   * Asparagus under four to six inches (a newspaper's garden column, 2021, read), strawberries
   * under 3 to 4 inches of straw, of which the lesser holds for chips, since what packs smothers
   * them (Missouri Botanical Garden, read), vegetables 1 inch, preferably 2 (a garden column, 2017,
   * read); shrubs a foot, off the stems (from memory).
   */
  @ParameterizedTest(name = "{0}: {1} in")
  @CsvSource({"asparagus, 6", "garden strawberry, 3", "kale, 2", "red currant, 12"})
  void kindsOfABed_bearWhatTheirSourceGives(String plant, double inches) {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));
    Shape shape = Shape.rectangle(Point.metres(0, 0), Length.feet(8), Length.feet(30));
    ElementId id = new ElementId(ElementKind.BED, "a");
    ElementDraft element =
        draft.add(id, SourceRef.NONE, c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL));
    PlantingWords.plant(
        new BedScope(draft, element, SourceRef.NONE), plant, null, null, null, null, null, null);
    List<BorneDepth> depths =
        new Study(PluginLoader.of(List.of(new PlantingPlugin())))
            .of(draft.freeze())
            .results()
            .all(YardFacts.BORNE_DEPTHS);
    assertEquals(1, depths.size());
    assertEquals(id, depths.get(0).in());
    assertEquals(plant, depths.get(0).plant());
    assertEquals(inches, depths.get(0).most().inches(), 1e-9);
  }
}
