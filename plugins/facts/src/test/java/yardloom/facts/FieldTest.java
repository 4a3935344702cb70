package yardloom.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/** A field of three by two cells of 2 m from (10, 20), values worked by hand; one is left out. */
class FieldTest {
  private static final double OUT = Double.NEGATIVE_INFINITY;

  /** Front row 1, 2, 3; rear row 10, left out, 30. */
  private static Field field() {
    double[] values = {1, 2, 3, 10, OUT, 30};
    return Field.of(Point.metres(10, 20), Length.metres(2), 3, 2, i -> values[i]);
  }

  private static OptionalDouble mean(double x, double y, double width, double depth) {
    return field()
        .mean(Shape.rectangle(Point.metres(x, y), Length.metres(width), Length.metres(depth)));
  }

  @Test
  void cells_areFoundByPlace_andNoneOutside() {
    assertEquals(OptionalDouble.of(3), field().at(2, 0));
    assertEquals(OptionalDouble.of(10), field().at(0, 1));
    assertEquals(OptionalDouble.empty(), field().at(1, 1), "left out");
    assertEquals(OptionalDouble.of(2), field().at(Point.metres(12, 20)));
    assertEquals(OptionalDouble.of(30), field().at(Point.metres(15.9, 22.1)));
    for (double[] out : new double[][] {{9.9, 21}, {16, 21}, {11, 19.9}, {11, 24}}) {
      assertEquals(OptionalDouble.empty(), field().at(Point.metres(out[0], out[1])));
    }
    assertEquals(OptionalDouble.empty(), field().at(3, 0));
    assertEquals(OptionalDouble.empty(), field().at(0, 2));
    assertEquals(15, field().centre(2, 1).x().metres(), 1e-9);
    assertEquals(23, field().centre(2, 1).y().metres(), 1e-9);
  }

  /** Centres lie at 11, 13 and 15 m, 21 and 23 m. */
  @Test
  void mean_isOfTheCellsWhoseCentreLiesInside() {
    assertEquals(1.5, mean(10, 20, 3.5, 2).orElseThrow(), 1e-9);
    assertEquals(5.5, mean(10, 20, 2, 4).orElseThrow(), 1e-9);
    // 1, 2, 3, 10 and 30; what is left out counts for nothing.
    assertEquals(46 / 5.0, mean(9, 19, 9, 9).orElseThrow(), 1e-9);
    assertEquals(OptionalDouble.empty(), mean(12.5, 22.5, 1, 1), "all left out");
    assertEquals(OptionalDouble.empty(), field().mean(Shape.EMPTY));
  }

  /** A narrow bed between the centres takes the cell of its inmost point. */
  @Test
  void shapeWithoutACentre_takesTheCellAtItsHeart() {
    assertEquals(3, mean(14.1, 20.1, 0.4, 0.4).orElseThrow(), 1e-9);
    assertEquals(OptionalDouble.empty(), mean(30, 30, 1, 1));
  }

  @Test
  void fieldsWithoutCells_orWithoutValues_areRefused() {
    Point at = Point.metres(0, 0);
    Length cell = Length.metres(1);
    assertThrows(IllegalArgumentException.class, () -> Field.of(at, Length.ZERO, 1, 1, i -> 0));
    assertThrows(IllegalArgumentException.class, () -> Field.of(at, cell, 0, 1, i -> 0));
    assertThrows(IllegalArgumentException.class, () -> Field.of(at, cell, 1, 0, i -> 0));
    assertThrows(IllegalArgumentException.class, () -> Field.of(at, cell, 1, 1, i -> Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () -> Field.of(at, cell, 1, 1, i -> Double.POSITIVE_INFINITY));
    assertEquals(1, Field.of(at, cell, 1, 1, i -> 7).columns());
  }
}
