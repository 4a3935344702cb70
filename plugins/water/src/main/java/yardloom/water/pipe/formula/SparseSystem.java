package yardloom.water.pipe.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Solves a symmetric positive definite system with few entries in each row.
 *
 * <p>The unknown with fewest neighbours goes first. On a tree that is always a leaf, no entry is
 * ever added, and the work grows with the number of unknowns times its logarithm; each loop adds
 * entries along itself only.
 *
 * <p>References: [1] G. Golub and C. Van Loan, Matrix Computations, section 4.1 (L D Lᵀ). [2] A.
 * George and J. Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981, chapter 5
 * (minimum degree); both from memory, checked by putting the solution into the system.
 */
final class SparseSystem {
  private final double[] diagonal;
  private final List<SortedMap<Integer, Double>> rows = new ArrayList<>();

  /** An unknown and how many neighbours it had when it was queued. */
  private record Candidate(int unknown, int neighbours) {}

  SparseSystem(int unknowns) {
    diagonal = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      rows.add(new TreeMap<>());
    }
  }

  /** Adds to the entry at ({@code i}, {@code i}). */
  void add(int i, double value) {
    diagonal[i] += value;
  }

  /** Adds to the entries at ({@code i}, {@code j}) and ({@code j}, {@code i}), two unknowns. */
  void couple(int i, int j, double value) {
    rows.get(i).merge(j, value, Double::sum);
    rows.get(j).merge(i, value, Double::sum);
  }

  /**
   * The solution for a right side; both the system and {@code right} are used up.
   *
   * @throws IllegalStateException if the system is not positive definite
   */
  double[] solve(double[] right) {
    PriorityQueue<Candidate> queue =
        new PriorityQueue<>(
            Comparator.comparingInt(Candidate::neighbours).thenComparingInt(Candidate::unknown));
    for (int i = 0; i < diagonal.length; i++) {
      queue.add(new Candidate(i, rows.get(i).size()));
    }
    boolean[] done = new boolean[diagonal.length];
    Deque<Integer> order = new ArrayDeque<>();
    while (!queue.isEmpty()) {
      Candidate next = queue.remove();
      int i = next.unknown();
      if (done[i] || rows.get(i).size() != next.neighbours()) {
        continue; // gone, or queued again since with another count
      }
      done[i] = true;
      order.push(i);
      eliminate(i, right);
      rows.get(i).keySet().forEach(j -> queue.add(new Candidate(j, rows.get(j).size())));
    }
    for (int i : order) {
      double sum = right[i];
      for (Map.Entry<Integer, Double> entry : rows.get(i).entrySet()) {
        sum -= entry.getValue() * right[entry.getKey()];
      }
      right[i] = sum / diagonal[i];
    }
    return right;
  }

  /** Takes an unknown out of the rows of its neighbours; its own row stays for the way back. */
  private void eliminate(int pivot, double[] right) {
    if (!(diagonal[pivot] > 0)) {
      throw new IllegalStateException("a joint has no way to a source");
    }
    SortedMap<Integer, Double> row = rows.get(pivot);
    row.forEach(
        (i, value) -> {
          double factor = value / diagonal[pivot];
          diagonal[i] -= factor * value;
          right[i] -= factor * right[pivot];
          rows.get(i).remove(pivot);
          row.tailMap(i + 1).forEach((j, other) -> couple(i, j, -factor * other));
        });
  }
}
