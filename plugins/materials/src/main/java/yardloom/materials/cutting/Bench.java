package yardloom.materials.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yardloom.materials.cutting.CuttingStock.Board;

/**
 * What lies on the saw bench: stock lengths, rising, and pieces with their kerf.
 *
 * <p>References: as {@link CuttingStock}.
 *
 * @param stocks lengths of boards in nanometres
 * @param measure their greatest common measure
 * @param sizes lengths of pieces, kerf included
 * @param counts how many of each
 */
record Bench(long[] stocks, long measure, long kerf, long[] sizes, int[] counts) {
  long room(int stock) {
    return stocks[stock] + kerf;
  }

  int cost(int stock) {
    return Math.toIntExact(stocks[stock] / measure);
  }

  List<Integer> byLength() {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < sizes.length; i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingLong((Integer i) -> -sizes[i]).thenComparing(i -> i));
    return order;
  }

  /** The pieces on the shortest board that holds them. */
  Board shortest(int[] pieces) {
    long used = 0;
    for (int i = 0; i < pieces.length; i++) {
      used += pieces[i] * sizes[i];
    }
    int stock = 0;
    while (room(stock) < used) {
      stock++;
    }
    return new Board(stock, cost(stock), pieces);
  }

  /**
   * Patterns to which no further piece can be added and which no shorter board holds; stops past
   * the limit.
   */
  List<Board> maximalPatterns() {
    List<Board> found = new ArrayList<>();
    List<Integer> order = byLength();
    order.removeIf(i -> counts[i] == 0);
    for (int stock = 0; stock < stocks.length; stock++) {
      extend(stock, new int[sizes.length], order, 0, room(stock), found);
    }
    return found;
  }

  private void extend(
      int stock, int[] pattern, List<Integer> order, int at, long left, List<Board> found) {
    if (found.size() > CuttingStock.MOST_PATTERNS) {
      return;
    }
    if (at == order.size()) {
      boolean maximal = order.stream().noneMatch(i -> sizes[i] <= left && pattern[i] < counts[i]);
      if (maximal && shortest(pattern).stock() == stock) {
        found.add(new Board(stock, cost(stock), pattern.clone()));
      }
      return;
    }
    int i = order.get(at);
    int most = (int) Math.min(counts[i], left / sizes[i]);
    for (int n = most; n >= 0; n--) {
      pattern[i] = n;
      extend(stock, pattern, order, at + 1, left - n * sizes[i], found);
    }
    pattern[i] = 0;
  }

  /** The cost if boards could be joined without loss; kerf makes long boards hold a little more. */
  double lengthBound() {
    double needed = 0;
    for (int i = 0; i < sizes.length; i++) {
      needed += (double) sizes[i] * counts[i];
    }
    double least = Double.POSITIVE_INFINITY;
    for (int stock = 0; stock < stocks.length; stock++) {
      least = Math.min(least, needed / room(stock) * cost(stock));
    }
    return least;
  }
}
