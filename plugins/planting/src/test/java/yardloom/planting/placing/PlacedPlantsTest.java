package yardloom.planting.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Lines that say where plants stand, in beds too large or too small for them. */
class PlacedPlantsTest {
  private static final SourceRef HERE = new SourceRef("p.groovy", 7, 3);

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));

  private BedScope bed(double widthFt, double depthFt) {
    Shape shape = Shape.rectangle(Point.metres(0, 0), Length.feet(widthFt), Length.feet(depthFt));
    ElementDraft element =
        draft.add(
            new ElementId(ElementKind.BED, "a"),
            HERE,
            c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL));
    return new BedScope(draft, element, HERE);
  }

  /** 40 by 40 ft hold more than 50,000 plants at an inch: 480 × 480 = 230,400. */
  @Test
  void tooManyPlaces_areAFaultOfTheLine() {
    PlacingWords.plantDrift(bed(40, 40), "chives", Point.metres(3, 3), 5, Length.inches(1), null);
    PlanException e = assertThrows(PlanException.class, () -> Planting.of(draft.freeze()));
    assertEquals(ProblemCode.LIMIT, e.problems().get(0).code());
    assertEquals(HERE, e.problems().get(0).place());
    assertTrue(e.getMessage().contains("wider spacing"), e.getMessage());
  }

  /** Half a foot is narrower than any spacing; each of two kinds has half of the 2 sq ft. */
  @Test
  void mixesByCount_withoutRoomForAny_haveGroundAndNoPlants() {
    BedScope bed = bed(0.5, 4);
    PlacingWords.plantMix(bed, "chives", null, 5, null);
    PlacingWords.plantMix(bed, "garden strawberry", null, 3, null);
    List<Planting> mixed = Planting.of(draft.freeze());
    assertEquals(2, mixed.size());
    for (Planting p : mixed) {
      assertEquals(List.of(), p.at());
      assertEquals(1, p.ground().area().squareFeet(), 1e-6);
    }
  }
}
