package yardloom.kernel.scope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** What scripts read of a thing: a house of 8 m by 6 m from (2, 3), a shed of 4 m by 2 m. */
class HandleTest {
  private static final ElementId HOUSE = new ElementId(ElementKind.BUILDING, "House");
  private static final Handle house = new Handle(HOUSE, box(2, 3, 8, 6));

  /** Over the house's eastern 2 m of its lower 2 m: 4 m² of its 8 m² in common. */
  private static final Handle shed =
      new Handle(new ElementId(ElementKind.STRUCTURE, "Shed"), box(8, 3, 4, 2));

  private static Shape box(double x, double y, double width, double depth) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(depth));
  }

  private static double area(Shape shape) {
    return shape.area().squareMetres();
  }

  private static void ends(Line line, double x1, double y1, double x2, double y2) {
    assertEquals(Point.metres(x1, y1), line.start());
    assertEquals(Point.metres(x2, y2), line.end());
  }

  private static void refused(ProblemCode code, String says, Executable what) {
    PlanException refused = assertThrows(PlanException.class, what);
    assertEquals(code, refused.problems().get(0).code());
    assertTrue(refused.getMessage().contains(says), refused.getMessage());
  }

  @Test
  void sides_areThoseOfTheCompass_withTheGroundOutsideOnTheLeft() {
    ends(house.getSouth(), 10, 3, 2, 3);
    ends(house.getNorth(), 2, 9, 10, 9);
    ends(house.getEast(), 10, 9, 10, 3);
    ends(house.getWest(), 2, 3, 2, 9);
    ends(house.side("west"), 2, 3, 2, 9);
    assertEquals("House", house.getName());
    assertEquals(HOUSE, house.id());
    assertEquals(Point.metres(6, 6), house.getCentre(), "2 + 8/2, 3 + 6/2");
    refused(
        ProblemCode.UNKNOWN_WORD,
        "building \"House\" has no edge that faces 'front' on the plan (north is up)",
        () -> house.side("front"));
  }

  @Test
  void ownSides_standForThoseOfTheCompass() {
    Line street = Line.between(Point.metres(0, 0), Point.metres(9, 1));
    Line lane = Line.between(Point.metres(9, 1), Point.metres(9, 7));
    Handle lot =
        Handle.withSides(
            new ElementId(ElementKind.LOT, "Lot"),
            box(0, 0, 9, 7),
            Map.of("street", street, "lane", lane));
    assertSame(street, lot.side("street"));
    assertSame(lane, lot.side("lane"));
    refused(ProblemCode.UNKNOWN_WORD, "has no side 'south'; it has lane, street", lot::getSouth);
  }

  @Test
  void sums_takeHandlesAndShapesAlike() {
    // House 48 m², shed 8 m², 4 m² in common.
    assertEquals(52, area(house.plus(shed)), 1e-9);
    assertEquals(52, area(house.plus(shed.getShape())), 1e-9);
    assertEquals(44, area(house.minus(shed)), 1e-9);
    assertEquals(4, area(shed.minus(house.getShape())), 1e-9);
    assertEquals(4, area(house.and(shed)), 1e-9);
    assertEquals(4, area(house.and(shed.getShape())), 1e-9);
  }

  @Test
  void ground_isShrunkGrownAndMoved() {
    assertEquals(24, area(house.shrunk(Length.metres(1))), 1e-9, "6 × 4");
    // Grown with round corners: 48 + 28 m of walls × 1 m + a circle of 1 m.
    assertEquals(48 + 28 + Math.PI, area(house.grown(Length.metres(1))), 0.02);
    assertEquals(
        Point.metres(6 + 1.5, 6 - 2.5),
        house.moved(Length.metres(1.5), Length.metres(-2.5)).centroid());
    // A quarter turn counter-clockwise about the origin takes (6, 6) to (-6, 6).
    Point turned = house.turned(Angle.degrees(90), Point.metres(0, 0)).centroid();
    assertEquals(-6, turned.x().metres(), 1e-9);
    assertEquals(6, turned.y().metres(), 1e-9);
    Point mirrored = house.mirrored(Point.metres(1, 0), Point.metres(1, 5)).centroid();
    assertEquals(1 - 5, mirrored.x().metres(), 1e-9, "as far left of x = 1 as it was right");
    assertEquals(6, mirrored.y().metres(), 1e-9);
    assertEquals(Point.metres(2, 5), house.nearest(Point.metres(-3, 5)));
  }

  @Test
  void line_isThatItWasDrawnAlong() {
    Line line = Line.between(Point.metres(0, 0), Point.metres(5, 0));
    Handle fence =
        Handle.along(new ElementId(ElementKind.FENCE, "F"), line, line.strip(Length.metres(0.2)));
    assertSame(line, fence.getLine());
    assertEquals(1.0, area(fence.getShape()), 1e-9, "5 m × 0.2 m");
    refused(
        ProblemCode.WRONG_TYPE,
        "building \"House\" was not drawn along a line; use one of its sides",
        house::getLine);
  }

  @Test
  void group_hasTheGroundOfAll_andItsParts() {
    Handle both = Handle.group(new ElementId(ElementKind.BED, "all"), List.of(house, shed));
    assertEquals(52, area(both.getShape()), 1e-9);
    assertEquals(List.of(house, shed), both.getParts());
    assertEquals(List.of(), house.getParts());
  }

  @Test
  void point_hasNoSidesAndNoMiddle() {
    Handle tap = new Handle(new ElementId(ElementKind.WATER_POINT, "Tap"), Shape.EMPTY);
    String says = "water point \"Tap\" is a point without ground";
    refused(ProblemCode.WRONG_TYPE, says, tap::getCentre);
    refused(ProblemCode.WRONG_TYPE, says, tap::getNorth);
    refused(ProblemCode.WRONG_TYPE, says, () -> tap.nearest(Point.metres(0, 0)));
  }
}
