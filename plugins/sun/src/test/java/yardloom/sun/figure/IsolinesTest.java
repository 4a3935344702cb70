package yardloom.sun.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.Field;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

class IsolinesTest {
  private static final double DUST_M2 = 1e-4;

  private static Field field(int columns, int rows, java.util.function.DoubleBinaryOperator of) {
    return Field.of(
        Point.metres(0, 0),
        Length.metres(0.1),
        columns,
        rows,
        i -> of.applyAsDouble((i % columns + 0.5) * 0.1, (i / columns + 0.5) * 0.1));
  }

  /** A cone's level is a circle; straight pieces between centres lose 0.2 % of its area. */
  @Property(tries = 50, seed = "20261125")
  void coneCutAtLevel_isCircle(@ForAll @DoubleRange(min = 0.5, max = 1.8) double radius) {
    Field cone = field(40, 40, (x, y) -> 5 - Math.hypot(x - 2, y - 2));
    Shape ground = new Isolines(cone).atLeast(5 - radius, DUST_M2);
    assertEquals(Math.PI * radius * radius, ground.area().squareMetres(), 0.01);
    assertEquals(1, ground.parts().size());
  }

  @Test
  void ring_keepsItsHole() {
    Field crater = field(40, 40, (x, y) -> -Math.abs(Math.hypot(x - 2, y - 2) - 1));
    Shape ground = new Isolines(crater).atLeast(-0.5, DUST_M2);
    assertEquals(Math.PI * (1.5 * 1.5 - 0.5 * 0.5), ground.area().squareMetres(), 0.02);
    assertTrue(!ground.contains(Point.metres(2, 2)), "the middle is a hole");
  }

  @Test
  void islandInAHole_isKept_unlessItIsTooSmall() {
    Field target = field(40, 40, (x, y) -> Math.cos(4 * Math.hypot(x - 2, y - 2)));
    Isolines lines = new Isolines(target);
    // cos(4 r) is above 0 for r below π/8 and between 3π/8 and 5π/8: a disc in a ring.
    Shape near =
        Shape.circle(Point.metres(2, 2), Length.metres(1.9)).and(lines.atLeast(0, DUST_M2));
    double disc = Math.PI * Math.pow(Math.PI / 8, 2);
    double ring = Math.PI * (Math.pow(1.9, 2) - Math.pow(3 * Math.PI / 8, 2));
    assertEquals(disc + ring, near.area().squareMetres(), 0.05);
    assertTrue(near.contains(Point.metres(2, 2)));
    assertTrue(!lines.atLeast(0, 0.6).contains(Point.metres(2, 2)), "the disc has 0.48 m²");
  }

  /** A plane's level is a straight line, placed exactly. */
  @Property(tries = 50, seed = "20261125")
  void planeCutAtLevel_isHalf(@ForAll @DoubleRange(min = 0.2, max = 3.8) double level) {
    Shape ground =
        new Isolines(field(40, 20, (x, y) -> x))
            .atLeast(level, DUST_M2)
            .and(Shape.rectangle(Point.metres(0, 0), Length.metres(4), Length.metres(2)));
    assertEquals((4 - level) * 2, ground.area().squareMetres(), 1e-6);
  }

  @Test
  void higherLevel_liesWithinLower() {
    Field waves = field(60, 40, (x, y) -> Math.sin(3 * x) * Math.cos(4 * y));
    Isolines lines = new Isolines(waves);
    assertTrue(lines.atLeast(0.2, DUST_M2).covers(lines.atLeast(0.5, DUST_M2)));
    assertTrue(lines.atLeast(2, DUST_M2).isEmpty(), "nothing reaches it");
    assertEquals(
        1,
        lines.atLeast(-2, DUST_M2).area().squareMetres() / (6.2 * 4.2),
        0.1,
        "everything and a ring around it does");
  }
}
