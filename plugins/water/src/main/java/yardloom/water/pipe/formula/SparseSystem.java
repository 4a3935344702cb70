package yardloom.water.pipe.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Solves symmetric positive definite systems that have entries in the same few places, again and
 * again.
 *
 * <p>The order of elimination and the places of entries that it adds are found once. Leaves go
 * first, which add no entry, so that a tree is solved in as many steps as it has unknowns; what is
 * left in loops goes by fewest neighbours.
 *
 * <p>References: [1] G. Golub and C. Van Loan, Matrix Computations, section 4.1 (L D Lᵀ). [2] A.
 * George and J. Liu, Computer Solution of Large Sparse Positive Definite Systems, 1981, chapter 5
 * (minimum degree); both from memory, checked by putting the solution into the system.
 */
final class SparseSystem {
  private static final int[] NONE = {};

  private final int unknowns;
  private final int couplings;

  /** The place of each given coupling among the values; two between the same unknowns share one. */
  private final int[] placeOf;

  private final int[] order;

  /**
   * For each unknown, those of its neighbours that are eliminated later, and the entries' places.
   */
  private final int[][] later;

  private final int[][] places;

  /** For each unknown, the places of the entries between each two of its later neighbours. */
  private final int[][] between;

  private int values;

  /**
   * The system with entries off the diagonal at the pairs ({@code from[k]}, {@code to[k]}).
   *
   * @param from unknowns from 0 on; none equals its partner in {@code to}
   */
  SparseSystem(int unknowns, int[] from, int[] to) {
    this.unknowns = unknowns;
    couplings = from.length;
    placeOf = new int[couplings];
    order = new int[unknowns];
    later = new int[unknowns][];
    places = new int[unknowns][];
    between = new int[unknowns][];
    Arrays.fill(later, NONE);
    Arrays.fill(places, NONE);
    Arrays.fill(between, NONE);
    Map<Long, Integer> known = new HashMap<>();
    int[] degree = new int[unknowns];
    // The neighbours of a leaf, and the place of its one entry, are what is left of a running xor.
    int[] neighbour = new int[unknowns];
    int[] place = new int[unknowns];
    for (int k = 0; k < couplings; k++) {
      int a = Math.min(from[k], to[k]);
      int b = Math.max(from[k], to[k]);
      Integer at = known.putIfAbsent((long) a << 32 | b, values);
      placeOf[k] = at == null ? values : at;
      if (at == null) {
        toggle(a, b, degree, neighbour, place, values, 1);
        values++;
      }
    }
    int done = stripLeaves(degree, neighbour, place);
    if (done < unknowns) {
      eliminateLoops(done, degree, known);
    }
  }

  private static void toggle(
      int a, int b, int[] degree, int[] neighbour, int[] place, int value, int count) {
    degree[a] += count;
    degree[b] += count;
    neighbour[a] ^= b;
    neighbour[b] ^= a;
    place[a] ^= value;
    place[b] ^= value;
  }

  /** Puts leaves first, again and again; returns how many unknowns went. */
  private int stripLeaves(int[] degree, int[] neighbour, int[] place) {
    int count = 0;
    for (int start = 0; start < unknowns; start++) {
      int i = start;
      while (degree[i] == 0 || degree[i] == 1) {
        boolean last = degree[i] == 0;
        order[count++] = i;
        if (last) {
          degree[i] = -1;
          break;
        }
        int next = neighbour[i];
        later[i] = new int[] {next};
        places[i] = new int[] {place[i]};
        toggle(i, next, degree, neighbour, place, place[i], -1);
        degree[i] = -1;
        // Go on at once with what has become a leaf, unless the loop above comes by it yet.
        if (next > start) {
          break;
        }
        i = next;
      }
    }
    return count;
  }

  /** An unknown and how many neighbours it had when it was queued. */
  private record Candidate(int unknown, int neighbours) {}

  private void eliminateLoops(int done, int[] degree, Map<Long, Integer> known) {
    Map<Integer, SortedMap<Integer, Integer>> rows = new TreeMap<>();
    known.forEach(
        (pair, at) -> {
          int a = (int) (pair >> 32);
          int b = (int) (long) pair;
          if (degree[a] >= 0 && degree[b] >= 0) {
            rows.computeIfAbsent(a, k -> new TreeMap<>()).put(b, at);
            rows.computeIfAbsent(b, k -> new TreeMap<>()).put(a, at);
          }
        });
    PriorityQueue<Candidate> queue =
        new PriorityQueue<>(
            Comparator.comparingInt(Candidate::neighbours).thenComparingInt(Candidate::unknown));
    rows.forEach((i, row) -> queue.add(new Candidate(i, row.size())));
    int count = done;
    while (!queue.isEmpty()) {
      Candidate next = queue.remove();
      int i = next.unknown();
      if (!rows.containsKey(i) || rows.get(i).size() != next.neighbours()) {
        continue; // gone, or queued again since with another count
      }
      order[count++] = i;
      SortedMap<Integer, Integer> row = rows.remove(i);
      later[i] = row.keySet().stream().mapToInt(j -> j).toArray();
      places[i] = row.values().stream().mapToInt(p -> p).toArray();
      between[i] = join(i, rows);
      for (int j : later[i]) {
        queue.add(new Candidate(j, rows.get(j).size()));
      }
    }
  }

  private int[] join(int i, Map<Integer, SortedMap<Integer, Integer>> rows) {
    List<Integer> pairs = new ArrayList<>();
    for (int a = 0; a < later[i].length; a++) {
      SortedMap<Integer, Integer> row = rows.get(later[i][a]);
      row.remove(i);
      for (int b = a + 1; b < later[i].length; b++) {
        Integer at = row.get(later[i][b]);
        if (at == null) {
          at = values++;
          row.put(later[i][b], at);
          rows.get(later[i][b]).put(later[i][a], at);
        }
        pairs.add(at);
      }
    }
    return pairs.stream().mapToInt(p -> p).toArray();
  }

  /**
   * The solution for a right side, which comes back in {@code right}; {@code diagonal} is used up.
   *
   * @param coupling the entry of each pair that the system was made with
   * @throws IllegalStateException if the system is not positive definite
   */
  void solve(double[] diagonal, double[] coupling, double[] right) {
    double[] value = new double[values];
    for (int k = 0; k < couplings; k++) {
      value[placeOf[k]] += coupling[k];
    }
    for (int i : order) {
      eliminate(i, diagonal, value, right);
    }
    for (int k = unknowns - 1; k >= 0; k--) {
      int i = order[k];
      double sum = right[i];
      for (int a = 0; a < later[i].length; a++) {
        sum -= value[places[i][a]] * right[later[i][a]];
      }
      right[i] = sum / diagonal[i];
    }
  }

  private void eliminate(int i, double[] diagonal, double[] value, double[] right) {
    if (!(diagonal[i] > 0)) {
      throw new IllegalStateException("the system is not positive definite");
    }
    int pair = 0;
    for (int a = 0; a < later[i].length; a++) {
      int j = later[i][a];
      double entry = value[places[i][a]];
      double factor = entry / diagonal[i];
      diagonal[j] -= factor * entry;
      right[j] -= factor * right[i];
      for (int b = a + 1; b < later[i].length; b++) {
        value[between[i][pair++]] -= factor * value[places[i][b]];
      }
    }
  }
}
