package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.List;

/**
 * Deals places out to kinds so that each has its share of every stretch of them, not of the whole
 * alone.
 *
 * <p>Each place goes to the kind that lags furthest behind its share, the first of those that lag
 * equally. Of any beginning of the places no kind has more than one above or {@code k − 1} below
 * its share, where {@code k} kinds are mixed.
 *
 * <p>References: [1] R. Tijdeman, The chairman assignment problem, Discrete Mathematics 32(3), 1980
 * (that such a dealing exists; the greedy one used here is simpler and a little looser; from
 * memory).
 */
public final class EvenMix {
  private EvenMix() {}

  /**
   * The kind of each place, by its number in {@code weights}.
   *
   * @param weights of the kinds, in any unit, not negative and not all zero
   */
  public static List<Integer> of(int places, List<Double> weights) {
    double all = weights.stream().mapToDouble(w -> w).sum();
    if (all <= 0) {
      throw new IllegalArgumentException("no weights to share by: " + weights);
    }
    int[] dealt = new int[weights.size()];
    List<Integer> kinds = new ArrayList<>();
    for (int place = 1; place <= places; place++) {
      int next = 0;
      double most = Double.NEGATIVE_INFINITY;
      for (int k = 0; k < dealt.length; k++) {
        double lag = place * weights.get(k) / all - dealt[k];
        if (lag > most + 1e-12) {
          most = lag;
          next = k;
        }
      }
      dealt[next]++;
      kinds.add(next);
    }
    return List.copyOf(kinds);
  }
}
