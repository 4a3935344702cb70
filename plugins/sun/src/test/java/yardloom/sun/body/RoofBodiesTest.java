package yardloom.sun.body;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.sun.TestYards;

/** Where ridges lie, and how roofs over other outlines step. */
class RoofBodiesTest {
  /** The two highest corners, the left or lower one first. */
  private static double[][] ridge(Form form, Shape eaves) {
    PlanBody.Hull hull = (PlanBody.Hull) new RoofBodies(form).of(eaves, 3, 5).get(0);
    double[][] top =
        Arrays.stream(hull.corners())
            .filter(c -> c[2] == 5)
            .sorted(Comparator.comparingDouble((double[] c) -> c[0] + c[1]))
            .toArray(double[][]::new);
    assertEquals(2, top.length);
    assertEquals(4, Arrays.stream(hull.corners()).filter(c -> c[2] == 3).count());
    return top;
  }

  /**
   * Over 10 by 6 m a gable's ridge runs the whole length at half the width; a hip's begins half the
   * width, 3 m, from each end. Over 6 by 10 m both run up the plan. A shed is high along the side
   * furthest up.
   */
  @ParameterizedTest
  @CsvSource({
    "GABLE, 10, 6, 0, 3, 10, 3",
    "GABLE, 6, 10, 3, 0, 3, 10",
    "HIP, 10, 6, 3, 3, 7, 3",
    "HIP, 6, 10, 3, 3, 3, 7",
    "SHED, 10, 6, 0, 6, 10, 6",
    "SHED, 6, 10, 0, 10, 6, 10"
  })
  void ridge_lies(Form form, double wide, double deep, double x, double y, double toX, double toY) {
    double[][] ridge = ridge(form, TestYards.rectangle(0, 0, wide, deep));
    assertArrayEquals(new double[] {x, y, 5}, ridge[0], 1e-5);
    assertArrayEquals(new double[] {toX, toY, 5}, ridge[1], 1e-5);
  }

  /** A square hip is a pyramid: its ridge is hardly longer than nothing, in the middle. */
  @Test
  void squareHip_isAPyramid() {
    double[][] ridge = ridge(Form.HIP, TestYards.rectangle(0, 0, 8, 8));
    assertArrayEquals(new double[] {4, 4, 5}, ridge[0], 1e-4);
    assertArrayEquals(new double[] {4, 4, 5}, ridge[1], 1e-4);
  }

  /**
   * Over a long hexagon, 4 m between its sides: four steps of half a metre from 3 to 5 m, drawn in
   * by an eighth, three, five and seven eighths of the 2 m to its middle: 0.25 to 1.75 m.
   */
  @Test
  void otherOutlines_stepInwards() {
    Shape hexagon =
        Shape.polygon(
            List.of(
                Point.metres(0, 0),
                Point.metres(8, 0),
                Point.metres(10, 2),
                Point.metres(8, 4),
                Point.metres(0, 4),
                Point.metres(-2, 2)));
    List<PlanBody> steps = new RoofBodies(Form.HIP).of(hexagon, 3, 5);
    assertEquals(4, steps.size());
    for (int i = 0; i < 4; i++) {
      double[][] corners = ((PlanBody.Hull) steps.get(i)).corners();
      double in = 0.25 + 0.5 * i;
      assertEquals(3 + 0.5 * i, Arrays.stream(corners).mapToDouble(c -> c[2]).min().orElseThrow());
      assertEquals(
          3.5 + 0.5 * i, Arrays.stream(corners).mapToDouble(c -> c[2]).max().orElseThrow());
      assertEquals(in, Arrays.stream(corners).mapToDouble(c -> c[1]).min().orElseThrow(), 1e-3);
      assertEquals(4 - in, Arrays.stream(corners).mapToDouble(c -> c[1]).max().orElseThrow(), 1e-3);
    }
  }
}
