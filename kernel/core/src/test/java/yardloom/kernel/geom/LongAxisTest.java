package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

class LongAxisTest {
  private static final Point ORIGIN = Point.metres(0, 0);

  private static Shape bed(double widthM, double depthM) {
    return Shape.rectangle(Point.metres(3, 7), Length.metres(widthM), Length.metres(depthM));
  }

  @Test
  void axis_ofTallRectangle_runsUp() {
    LongAxis axis = LongAxis.of(bed(1.2, 5));
    assertEquals(5, axis.length().metres(), 1e-12);
    assertEquals(1.2, axis.width().metres(), 1e-12);
    Point up = axis.at(Length.metres(1), Length.ZERO);
    Point start = axis.at(Length.ZERO, Length.ZERO);
    assertEquals(1, up.y().metres() - start.y().metres(), 1e-12);
    assertEquals(0, up.x().metres() - start.x().metres(), 1e-12);
  }

  @Test
  void axis_ofSquare_runsRight() {
    LongAxis axis = LongAxis.of(bed(2, 2));
    assertEquals(
        ORIGIN.moved(Length.metres(3), Length.metres(7)), axis.at(Length.ZERO, Length.ZERO));
    assertEquals(5, axis.at(Length.metres(2), Length.ZERO).x().metres(), 1e-12);
  }

  @Test
  void row_acrossNotch_comesInTwoPieces() {
    Shape notched =
        bed(6, 2).minus(Shape.rectangle(Point.metres(5, 8), Length.metres(1), Length.metres(2)));
    LongAxis axis = LongAxis.of(notched);
    assertEquals(List.of(6.0), lengths(axis.row(Length.metres(0.5))));
    assertEquals(List.of(2.0, 3.0), lengths(axis.row(Length.metres(1.5))));
    assertEquals(List.of(), axis.row(Length.metres(2.5)));
  }

  private static List<Double> lengths(List<Line> rows) {
    return rows.stream().map(l -> Math.rint(l.length().metres() * 1e6) / 1e6).toList();
  }

  @Test
  void clearance_ofPoints_isDistanceToNearestEdge() {
    Clearance clearance = Clearance.within(bed(6, 2));
    assertEquals(0.5, clearance.of(Point.metres(5, 7.5)).metres(), 1e-12);
    assertEquals(0, clearance.of(Point.metres(3, 8)).metres(), 1e-12);
    assertEquals(-1, clearance.of(Point.metres(2, 8)).metres(), 1e-12);
  }

  @Test
  void emptyShape_hasNeitherAxisNorInside() {
    assertThrows(IllegalStateException.class, () -> LongAxis.of(Shape.EMPTY));
    assertThrows(IllegalStateException.class, () -> Clearance.within(Shape.EMPTY));
  }

  @Property(seed = "20261125")
  void slices_ofTurnedBed_addUp(
      @ForAll @DoubleRange(min = -180, max = 180) double degrees,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
    Shape bed = bed(6, 2).turned(Angle.degrees(degrees), ORIGIN);
    LongAxis axis = LongAxis.of(bed);
    Length cut = axis.length().times(share);
    assertEquals(6, axis.length().metres(), 1e-6);
    double first = axis.slice(Length.ZERO, cut).area().squareMetres();
    double second = axis.slice(cut, axis.length()).area().squareMetres();
    assertEquals(12 * share, first, 1e-4);
    assertEquals(12, first + second, 1e-4);
  }
}
