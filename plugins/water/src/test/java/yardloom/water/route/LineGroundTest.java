package yardloom.water.route;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.lot.LotWords;
import yardloom.water.RoofYard;

/**
 * Where trenches may lie and what they cost: a house of 5 m, a drive of 1.2 m from 10 m on, a bed
 * of 4 by 3 m from 30 m on, a lot that ends at 50 m. Worked by hand.
 */
class LineGroundTest {
  private static final SourceRef HERE = new SourceRef("line.groovy", 3, 1);

  private static LineGround ground() {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "USD"));
    LotWords.lot(
        new PlanScope(draft, HERE),
        List.of(at(-20, -20), at(50, -20), at(50, 30), at(-20, 30)),
        null);
    Shape house = RoofYard.box(0, 0, 5, 5);
    draft.add(
        new ElementId(ElementKind.BUILDING, "house"),
        HERE,
        c ->
            new Element.Building(
                c,
                house,
                Length.metres(3),
                Length.metres(5),
                Length.metres(0.3),
                Element.RoofForm.GABLE,
                false));
    Shape drive = RoofYard.box(10, 0, 1.2, 20);
    draft.add(
        new ElementId(ElementKind.PAVING, "drive"),
        HERE,
        c -> new Element.Paving(c, drive, "concrete"));
    Shape bed = RoofYard.box(30, 0, 4, 3);
    draft.add(
        new ElementId(ElementKind.BED, "greens"),
        HERE,
        c -> new Element.Bed(c, bed, Element.BedUse.ANNUAL));
    return LineGround.of(draft.freeze(), List.of());
  }

  private static Point at(double x, double y) {
    return Point.metres(x, y);
  }

  private static Line line(double fromX, double fromY, double toX, double toY) {
    return Line.between(at(fromX, fromY), at(toX, toY));
  }

  /** 5 m of open ground at 1.3, and 3 more for each of the 1.2 m below the drive. */
  @Test
  void trenchBelowTheDrive_costsMore_andItsPieceIsTheSleeve() {
    Line across = line(8, 5, 13, 5);
    assertEquals(5 * 1.3 + 3 * 1.2, ground().cost(across), 1e-9);
    assertEquals(1.2, ground().underPaving(across).metres(), 1e-9);
    List<Line> pieces = ground().piecesUnderPaving(across);
    assertEquals(1, pieces.size());
    assertEquals(1.2, pieces.get(0).length().metres(), 1e-9);
    assertTrue(ground().piecesUnderPaving(line(12, 5, 20, 5)).isEmpty());
  }

  /** Along the front of the bed a metre is a metre; 3 cm before it 1.3, across it barred. */
  @Test
  void trenchAlongABed_isCheapest_acrossItBarred() {
    assertEquals(4, ground().cost(line(30, 0, 34, 0)), 1e-9);
    assertEquals(4 * 1.3, ground().cost(line(30, -0.03, 34, -0.03)), 1e-9);
    assertTrue(ground().isAllowed(line(30, 0, 34, 0)));
    assertFalse(ground().isAllowed(line(29, 1, 35, 1)));
  }

  /** 6 in (0.1524 m) off the wall is an edge, 10 cm is barred. */
  @Test
  void trenchKeepsSixInchesOffWalls() {
    assertFalse(ground().isAllowed(line(5.1, 1, 5.1, 4)));
    assertTrue(ground().isAllowed(line(5.16, 1, 5.16, 4)));
    assertEquals(3, ground().cost(line(5.16, 1, 5.16, 4)), 1e-9);
    Point off = ground().offWall(at(5.05, 2)).orElseThrow();
    assertEquals(5.1524, off.x().metres(), 1e-6);
    assertEquals(2, off.y().metres(), 1e-6);
    assertEquals(Optional.empty(), ground().offWall(at(7, 2)));
  }

  @Test
  void trenchStaysOnTheLot() {
    assertTrue(ground().isAllowed(line(40, 10, 50, 10)));
    assertFalse(ground().isAllowed(line(40, 10, 50.1, 10)));
  }

  /** A line may bend at the corners of the drive and the bed, not at those inside walls. */
  @Test
  void bends_lieOnOpenGround() {
    List<Point> bends = ground().bends();
    assertTrue(bends.stream().anyMatch(p -> p.distance(at(10, 0)).metres() < 1e-9));
    assertTrue(bends.stream().anyMatch(p -> p.distance(at(34, 3)).metres() < 1e-9));
    assertTrue(bends.stream().noneMatch(p -> RoofYard.box(0, 0, 5, 5).distance(p).metres() < 0.1));
  }
}
