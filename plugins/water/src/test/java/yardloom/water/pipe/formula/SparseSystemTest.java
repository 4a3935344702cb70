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
    SparseSystem system = new SparseSystem(3);
    system.add(0, 4);
    system.add(1, 3);
    system.add(2, 2);
    system.couple(0, 1, 1);
    system.couple(1, 2, 1);
    assertArrayEquals(new double[] {1, 2, 3}, system.solve(new double[] {6, 10, 8}), 1e-12);
  }

  @Test
  void unknownWithoutAnEntry_isRefused() {
    SparseSystem system = new SparseSystem(2);
    system.add(0, 1);
    assertThrows(IllegalStateException.class, () -> system.solve(new double[2]));
  }

  /** Random loops of strong diagonals: the solution put back gives the right side. */
  @Property(tries = 100, seed = "20261125")
  void solution_putIntoTheSystem_givesTheRightSide(
      @ForAll @IntRange(min = 1, max = 40) int n, @ForAll @IntRange(min = 0, max = 999) int seed) {
    Random random = new Random(seed);
    double[][] dense = new double[n][n];
    SparseSystem system = new SparseSystem(n);
    for (int k = 0; k < 2 * n; k++) {
      int i = random.nextInt(n);
      int j = random.nextInt(n);
      double value = random.nextDouble();
      if (i != j) {
        system.couple(i, j, -value);
        dense[i][j] -= value;
        dense[j][i] -= value;
        system.add(i, value);
        system.add(j, value);
        dense[i][i] += value;
        dense[j][j] += value;
      }
    }
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      system.add(i, 0.5);
      dense[i][i] += 0.5;
      right[i] = random.nextDouble() - 0.5;
    }
    double[] x = system.solve(right.clone());
    for (int i = 0; i < n; i++) {
      double sum = 0;
      for (int j = 0; j < n; j++) {
        sum += dense[i][j] * x[j];
      }
      assertEquals(right[i], sum, 1e-9);
    }
  }
}
