package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SparseSystemTest {
  /** 4x + y = 6, x + 3y + z = 10, y + 2z = 8 has x = 1, y = 2, z = 3. */
  @Test
  void threeEquations_haveTheSolutionWorkedByHand() {
    SparseSystem system = new SparseSystem(3, new int[] {0, 1}, new int[] {1, 2});
    double[] right = {6, 10, 8};
    system.solve(new double[] {4, 3, 2}, new double[] {1, 1}, right);
    assertArrayEquals(new double[] {1, 2, 3}, right, 1e-12);
  }

  @Test
  void unknownWithoutAnEntry_isRefused() {
    SparseSystem system = new SparseSystem(2, new int[0], new int[0]);
    assertThrows(
        IllegalStateException.class,
        () -> system.solve(new double[] {1, 0}, new double[0], new double[2]));
  }

  /** Random trees with loops of strong diagonals: the solution put back gives the right side. */
  @Property(tries = 200, seed = "20261125")
  void solution_putIntoTheSystem_givesTheRightSide(
      @ForAll @IntRange(min = 1, max = 40) int n,
      @ForAll @IntRange(min = 0, max = 40) int loops,
      @ForAll @IntRange(min = 0, max = 999) int seed) {
    Random random = new Random(seed);
    int[] from = new int[n - 1 + (n > 1 ? loops : 0)];
    int[] to = new int[from.length];
    double[] coupling = new double[from.length];
    double[] diagonal = new double[n];
    double[][] dense = new double[n][n];
    for (int k = 0; k < from.length; k++) {
      from[k] = k < n - 1 ? k + 1 : 1 + random.nextInt(n - 1);
      to[k] = random.nextInt(from[k]);
      coupling[k] = -random.nextDouble();
      dense[from[k]][to[k]] += coupling[k];
      dense[to[k]][from[k]] += coupling[k];
      diagonal[from[k]] -= coupling[k];
      diagonal[to[k]] -= coupling[k];
    }
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      diagonal[i] += 0.5;
      dense[i][i] = diagonal[i];
      right[i] = random.nextDouble() - 0.5;
    }
    double[] x = right.clone();
    new SparseSystem(n, from, to).solve(diagonal, coupling, x);
    for (int i = 0; i < n; i++) {
      double sum = 0;
      for (int j = 0; j < n; j++) {
        sum += dense[i][j] * x[j];
      }
      assertEquals(right[i], sum, 1e-9);
    }
  }
}
