package yardloom.planting.canopy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
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

/** What a bed gives the sun's scene must not grow with its plants: each cell asks each body. */
class CanopyGrowthTest {
  private static List<Obstacle> tomatoes(Shape shape, Length spacing) {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, "field"),
            SourceRef.NONE,
            c -> new Element.Bed(c, shape, Element.BedUse.ANNUAL));
    PlantingWords.plant(
        new BedScope(draft, element, SourceRef.NONE),
        "tomato",
        spacing,
        null,
        null,
        null,
        null,
        null);
    return new Study(PluginLoader.of(List.of(new PlantingPlugin())))
        .of(draft.freeze())
        .results()
        .all(YardFacts.OBSTACLES);
  }

  /**
   * Tomatoes spread 24 to 36 in, so 2.5 ft, 4 ft apart: 64 × 64 of them in a bed of 256 ft, 2 ft
   * from its edge. Crowns reach to 0.75 ft from it: a square of 254.5 ft, less what four round
   * corners lack, (4 − π) 1.25² = 1.34 sq ft. They fill 2.5 / 4 of a row's side, of whose light 0.7
   * is held back: 1 − 0.625 × 0.7 = 0.5625 passes in July; in January none stand.
   */
  @Test
  void fourThousandPlantsThatDoNotTouch_areOneBody() {
    List<Obstacle> given =
        tomatoes(
            Shape.rectangle(Point.metres(0, 0), Length.feet(256), Length.feet(256)),
            Length.feet(4));
    assertEquals(3, given.size(), "one for each stage");
    Obstacle grown = given.get(2);
    assertEquals(1, grown.footprint().polygons().size());
    assertEquals(
        254.5 * 254.5 - 1.34, grown.footprint().area().squareFeet(), 0.5, "square, round corners");
    assertEquals(0.5625, grown.passes().get(6), 1e-9);
    assertEquals(1, grown.passes().get(0), 1e-9);
  }

  /** An angle bed keeps its notch: the hull of all plants alone would shade it. */
  @Test
  void manyPlantsOfAnAngledBed_leaveItsNotchFree() {
    Shape square = Shape.rectangle(Point.metres(0, 0), Length.feet(40), Length.feet(40));
    Shape notch =
        Shape.rectangle(
            Point.metres(Length.feet(20).metres(), Length.feet(20).metres()),
            Length.feet(20),
            Length.feet(20));
    List<Obstacle> given = tomatoes(square.minus(notch), Length.feet(2));
    assertTrue(given.get(2).footprint().and(notch).area().squareFeet() < 12, "leaves hang over");
    assertTrue(given.get(2).footprint().area().squareFeet() > 1150, "the rest is covered");
  }

  /** Five by ten stand free as fifty bodies; a row more and all are one. */
  @Test
  void aFewPlantsThatDoNotTouch_keepABodyEach() {
    assertEquals(50, parts(20, 40));
    assertEquals(1, parts(20, 44));
  }

  private static int parts(double widthFt, double lengthFt) {
    return tomatoes(
            Shape.rectangle(Point.metres(0, 0), Length.feet(widthFt), Length.feet(lengthFt)),
            Length.feet(4))
        .get(2)
        .footprint()
        .polygons()
        .size();
  }
}
