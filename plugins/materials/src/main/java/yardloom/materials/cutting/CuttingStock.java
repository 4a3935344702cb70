package yardloom.materials.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * The cheapest boards from which a list of pieces can be sawn: the fewest boards of one stock
 * length, or the least length of several.
 *
 * <p>Lengths are whole nanometres, so that inches, their binary fractions and millimetres are all
 * exact. Kerf falls between pieces: a stock of L + k holds pieces of l + k. A board costs its
 * length over the greatest common measure of the stock lengths, so one board of a single length
 * costs 1. The linear programme over all maximal cutting patterns bounds the cost from below;
 * branch and bound over pattern counts closes the gap. The result says whether it is proven best;
 * beyond the limits (patterns or nodes) it is a good list that is not proven. No pieces need no
 * boards; a piece longer than every stock is OUT_OF_RANGE.
 *
 * <p>References: [1] P. C. Gilmore, R. E. Gomory, A linear programming approach to the
 * cutting-stock problem, Operations Research 9, 1961, pp. 849-859 (several stock lengths: pp.
 * 851-852).
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
   * @param stockNm the board's length
   * @param pieces how many of each demand, in the order of the demands
   * @param boards how many boards are sawn so
   */
  public record Pattern(long stockNm, List<Integer> pieces, int boards) {
    public Pattern {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * The cut list.
   *
   * @param boards boards to buy
   * @param lengthNm their length in all
   * @param bound the linear programme's bound on the cost: boards of one length, else the length in
   *     all over {@code measureNm}
   * @param measureNm greatest common measure of the stock lengths
   * @param proven whether no list costs less
   */
  public record CutList(
      List<Pattern> patterns,
      int boards,
      long lengthNm,
      double bound,
      long measureNm,
      boolean proven) {
    public CutList {
      patterns = List.copyOf(patterns);
    }
  }

  /** A board with its pieces, while the list is sought. */
  record Board(int stock, int cost, int[] pieces) {}

  /** The least length of boards of the given lengths. */
  public static CutList solve(List<Long> stocksNm, long kerfNm, List<Demand> demands) {
    long[] stocks = stocksNm.stream().mapToLong(v -> v).sorted().distinct().toArray();
    requireFit(stocks, kerfNm, demands);
    long measure = Arrays.stream(stocks).reduce(0, CuttingStock::greatestCommonMeasure);
    if (demands.stream().allMatch(d -> d.count() == 0)) {
      return new CutList(List.of(), 0, 0, 0, measure, true);
    }
    long[] sizes = demands.stream().mapToLong(d -> d.lengthNm() + kerfNm).toArray();
    int[] counts = demands.stream().mapToInt(Demand::count).toArray();
    Bench bench = new Bench(stocks, measure, kerfNm, sizes, counts);
    List<Board> greedy = firstFit(bench);
    List<Board> patterns = bench.maximalPatterns();
    if (patterns.size() > MOST_PATTERNS) {
      double bound = bench.lengthBound();
      return list(bench, greedy, bound, cost(greedy) == (int) Math.ceil(bound - EPS));
    }
    PatternSearch.Outcome best = new PatternSearch(patterns, counts, greedy).run();
    return list(bench, best.boards(), best.bound(), best.proven());
  }

  private static long greatestCommonMeasure(long a, long b) {
    return b == 0 ? a : greatestCommonMeasure(b, a % b);
  }

  static int cost(List<Board> boards) {
    return boards.stream().mapToInt(Board::cost).sum();
  }

  private static void requireFit(long[] stocks, long kerfNm, List<Demand> demands) {
    if (stocks.length == 0 || stocks[0] <= 0) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "boards need a length above zero");
    }
    long longest = stocks[stocks.length - 1];
    if (kerfNm < 0) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a saw kerf cannot be negative");
    }
    for (Demand d : demands) {
      if (d.lengthNm() <= 0 || d.count() < 0 || d.lengthNm() > longest) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "`"
                + d.label()
                + "` of "
                + d.lengthNm() / 25.4e6
                + " in cannot be sawn from a board of "
                + longest / 25.4e6
                + " in; choose a longer stock length");
      }
    }
  }

  /**
   * Long pieces first, each into the first board with room; boards are longest at first, then each
   * shrinks to the shortest stock that holds its pieces.
   */
  private static List<Board> firstFit(Bench bench) {
    List<int[]> boards = new ArrayList<>();
    List<Long> left = new ArrayList<>();
    for (int i : bench.byLength()) {
      for (int n = 0; n < bench.counts()[i]; n++) {
        int at = 0;
        while (at < boards.size() && left.get(at) < bench.sizes()[i]) {
          at++;
        }
        if (at == boards.size()) {
          boards.add(new int[bench.sizes().length]);
          left.add(bench.room(bench.stocks().length - 1));
        }
        boards.get(at)[i]++;
        left.set(at, left.get(at) - bench.sizes()[i]);
      }
    }
    return boards.stream().map(bench::shortest).toList();
  }

  /** Boards as patterns with counts; pieces beyond the demand are left uncut. */
  private static CutList list(Bench bench, List<Board> boards, double bound, boolean proven) {
    int[] open = bench.counts().clone();
    Map<List<Integer>, Integer> grouped = new TreeMap<>(CuttingStock::longAndFullFirst);
    for (Board board : boards) {
      int[] cut = new int[open.length];
      for (int i = 0; i < open.length; i++) {
        cut[i] = Math.min(board.pieces()[i], open[i]);
        open[i] -= cut[i];
      }
      List<Integer> key = new ArrayList<>(List.of(board.stock()));
      for (int pieces : cut) {
        key.add(pieces);
      }
      grouped.merge(key, 1, Integer::sum);
    }
    List<Pattern> patterns = new ArrayList<>();
    grouped.forEach(
        (key, n) ->
            patterns.add(new Pattern(bench.stocks()[key.get(0)], key.subList(1, key.size()), n)));
    long length = patterns.stream().mapToLong(p -> p.stockNm() * p.boards()).sum();
    return new CutList(patterns, boards.size(), length, bound, bench.measure(), proven);
  }

  private static int longAndFullFirst(List<Integer> a, List<Integer> b) {
    for (int i = 0; i < a.size(); i++) {
      int order = Integer.compare(b.get(i), a.get(i));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }
}
