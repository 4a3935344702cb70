package yardloom.materials.calc;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * The fewest boards of one stock length from which a list of pieces can be sawn.
 *
 * <p>Lengths are whole nanometres, so that inches, their binary fractions and millimetres are all
 * exact. Kerf falls between pieces: a stock of L + k holds pieces of l + k. The linear programme
 * over all maximal cutting patterns bounds the number of boards from below; branch and bound over
 * pattern counts closes the gap. The result says whether it is proven best; beyond the limits
 * (patterns or nodes) it is a good list that is not proven. No pieces need no boards; a piece
 * longer than the stock is OUT_OF_RANGE.
 *
 * <p>References: [1] P. C. Gilmore, R. E. Gomory, A linear programming approach to the
 * cutting-stock problem, Operations Research 9, 1961, pp. 849-859.
 */
public final class CuttingStock {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.memory(
          "A linear programming approach to the cutting-stock problem",
          "P. C. Gilmore and R. E. Gomory, Operations Research 9",
          1961,
          "pp. 849-859");

  static final int MOST_PATTERNS = 4000;
  private static final double EPS = 1e-6;

  private CuttingStock() {}

  /**
   * Pieces of one length.
   *
   * @param label what they are for
   */
  public record Demand(String label, long lengthNm, int count) {}

  /**
   * One way to saw a board.
   *
   * @param pieces how many of each demand, in the order of the demands
   * @param boards how many boards are sawn so
   */
  public record Pattern(List<Integer> pieces, int boards) {
    public Pattern {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * The cut list.
   *
   * @param boards boards to buy
   * @param bound the linear programme's bound; no list can need fewer than its ceiling
   * @param proven whether {@code boards} is the least possible
   */
  public record CutList(List<Pattern> patterns, int boards, double bound, boolean proven) {
    public CutList {
      patterns = List.copyOf(patterns);
    }
  }

  public static CutList solve(long stockNm, long kerfNm, List<Demand> demands) {
    requireFit(stockNm, kerfNm, demands);
    if (demands.stream().allMatch(d -> d.count() == 0)) {
      return new CutList(List.of(), 0, 0, true);
    }
    long room = stockNm + kerfNm;
    long[] sizes = demands.stream().mapToLong(d -> d.lengthNm() + kerfNm).toArray();
    int[] counts = demands.stream().mapToInt(Demand::count).toArray();
    List<int[]> greedy = firstFit(room, sizes, counts);
    List<int[]> patterns = maximalPatterns(room, sizes, counts);
    if (patterns.size() > MOST_PATTERNS) {
      double bound = areaBound(room, sizes, counts);
      return list(greedy, counts, bound, greedy.size() == (int) Math.ceil(bound - EPS));
    }
    PatternSearch.Outcome best = new PatternSearch(patterns, counts, greedy).run();
    return list(best.boards(), counts, best.bound(), best.proven());
  }

  private static void requireFit(long stockNm, long kerfNm, List<Demand> demands) {
    if (kerfNm < 0) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a saw kerf cannot be negative");
    }
    for (Demand d : demands) {
      if (d.lengthNm() <= 0 || d.count() < 0 || d.lengthNm() > stockNm) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "`"
                + d.label()
                + "` of "
                + d.lengthNm() / 25.4e6
                + " in cannot be sawn from a board of "
                + stockNm / 25.4e6
                + " in; choose a longer stock length");
      }
    }
  }

  /** Long pieces first, each into the first board with room. */
  private static List<int[]> firstFit(long room, long[] sizes, int[] counts) {
    List<int[]> boards = new ArrayList<>();
    List<Long> left = new ArrayList<>();
    for (int i : byLength(sizes)) {
      for (int n = 0; n < counts[i]; n++) {
        int at = 0;
        while (at < boards.size() && left.get(at) < sizes[i]) {
          at++;
        }
        if (at == boards.size()) {
          boards.add(new int[sizes.length]);
          left.add(room);
        }
        boards.get(at)[i]++;
        left.set(at, left.get(at) - sizes[i]);
      }
    }
    return boards;
  }

  private static List<Integer> byLength(long[] sizes) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < sizes.length; i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingLong((Integer i) -> -sizes[i]).thenComparing(i -> i));
    return order;
  }

  /** Patterns to which no further piece can be added; stops past the limit. */
  private static List<int[]> maximalPatterns(long room, long[] sizes, int[] counts) {
    List<int[]> found = new ArrayList<>();
    List<Integer> order = byLength(sizes);
    order.removeIf(i -> counts[i] == 0);
    extend(new int[sizes.length], order, 0, room, sizes, counts, found);
    return found;
  }

  private static void extend(
      int[] pattern,
      List<Integer> order,
      int at,
      long left,
      long[] sizes,
      int[] counts,
      List<int[]> found) {
    if (found.size() > MOST_PATTERNS) {
      return;
    }
    if (at == order.size()) {
      boolean maximal = order.stream().noneMatch(i -> sizes[i] <= left && pattern[i] < counts[i]);
      if (maximal) {
        found.add(pattern.clone());
      }
      return;
    }
    int i = order.get(at);
    int most = (int) Math.min(counts[i], left / sizes[i]);
    for (int n = most; n >= 0; n--) {
      pattern[i] = n;
      extend(pattern, order, at + 1, left - n * sizes[i], sizes, counts, found);
    }
    pattern[i] = 0;
  }

  private static double areaBound(long room, long[] sizes, int[] counts) {
    double needed = 0;
    for (int i = 0; i < sizes.length; i++) {
      needed += (double) sizes[i] * counts[i];
    }
    return needed / room;
  }

  /** Boards as patterns with counts; pieces beyond the demand are left uncut. */
  private static CutList list(List<int[]> boards, int[] counts, double bound, boolean proven) {
    int[] open = counts.clone();
    Map<List<Integer>, Integer> grouped = new TreeMap<>(CuttingStock::fullFirst);
    for (int[] board : boards) {
      List<Integer> pieces = new ArrayList<>();
      for (int i = 0; i < board.length; i++) {
        int cut = Math.min(board[i], open[i]);
        open[i] -= cut;
        pieces.add(cut);
      }
      grouped.merge(pieces, 1, Integer::sum);
    }
    List<Pattern> patterns = new ArrayList<>();
    grouped.forEach((pieces, n) -> patterns.add(new Pattern(pieces, n)));
    return new CutList(patterns, boards.size(), bound, proven);
  }

  private static int fullFirst(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < a.size(); i++) {
      int order = Integer.compare(b.get(i), a.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }
}
