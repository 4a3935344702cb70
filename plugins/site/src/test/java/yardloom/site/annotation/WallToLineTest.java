package yardloom.site.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

class WallToLineTest {
  private static final Shape HOUSE = box(5, 5, 10, 8);
  private static final Line PARALLEL = Line.between(p(0, 0), p(30, 0));

  private static Point p(double xM, double yM) {
    return Point.metres(xM, yM);
  }

  private static Shape box(double xM, double yM, double widthM, double depthM) {
    return Shape.rectangle(p(xM, yM), Length.metres(widthM), Length.metres(depthM));
  }

  private static Line past(Line side, List<Geometry> others) {
    return WallToLine.between(HOUSE, side, others, List.of(), List.of());
  }

  @Test
  void between_freeParallelWall_leavesItsMiddleSquarely() {
    Line way = past(PARALLEL, List.of());
    assertEquals(5, way.length().metres(), 1e-9);
    assertEquals(10, way.start().x().metres(), 1e-9);
    assertEquals(10, way.end().x().metres(), 1e-9);
  }

  @Test
  void between_bedBeforeTheMiddle_goesPastItEquallyShort() {
    Shape bed = box(7, 1, 6, 2);
    Line way = past(PARALLEL, List.of(bed.jts()));
    assertFalse(way.jts().intersects(bed.jts()));
    assertEquals(5, way.length().metres(), 1e-9);
  }

  /** A bed along the whole wall cannot be passed; the distance must not grow for its sake. */
  @Test
  void between_bedAlongTheWholeWall_crossesIt() {
    Shape bed = box(0, 1, 30, 2);
    Line way = past(PARALLEL, List.of(bed.jts()));
    assertTrue(way.jts().intersects(bed.jts()));
    assertEquals(5, way.length().metres(), 1e-9);
  }

  /** Distance of a point from 3x + 4y = 0 is |3x + 4y| / 5 (Hesse's normal form): 35 / 5. */
  @Test
  void between_skewSide_startsAtTheNearestCornerWhateverStandsThere() {
    Line skew = Line.between(p(-40, 30), p(40, -30));
    Line way = past(skew, List.of(box(1, 1, 2, 2).jts()));
    assertEquals(7, way.length().metres(), 1e-9);
    assertEquals(0, way.start().distance(p(5, 5)).metres(), 1e-9);
  }
}
