package yardloom.sheet.compose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

class LinesLeftTest {
  private static Line across() {
    return Line.between(Point.metres(0, 1), Point.metres(10, 1));
  }

  private static Shape bed(double x) {
    return Shape.rectangle(Point.metres(x, 0), Length.metres(2), Length.metres(2));
  }

  @Test
  void bedOverALine_leavesWhatLiesOnBothSides() {
    List<Line> left = new LinesLeft().of(across(), bed(4));
    assertEquals(List.of(4.0, 4.0), left.stream().map(l -> l.length().metres()).toList());
  }

  @Test
  void sameAgain_isKeptForThisSetAndTheNext_andMovedBedIsNot() {
    LinesLeft kept = new LinesLeft();
    List<Line> first = kept.of(across(), bed(4));
    assertSame(first, kept.of(across(), bed(4)));
    kept.next();
    assertSame(first, kept.of(across(), bed(4)));
    assertEquals(
        List.of(5.0, 3.0),
        kept.of(across(), bed(5)).stream().map(l -> l.length().metres()).toList());
    kept.next();
    kept.next();
    assertNotSame(first, kept.of(across(), bed(4)));
  }
}
