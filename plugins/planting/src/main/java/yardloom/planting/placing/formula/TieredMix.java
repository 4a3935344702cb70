package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Deals the places of a mix so that what is tall has those nearest the pole: each tier of kinds
 * takes as many places, from that side on, as its kinds have in an even mix, and is mixed evenly
 * within. Kinds of one tier are dealt as by {@link EvenMix} alone.
 *
 * <p>References: common practice, no source.
 */
public final class TieredMix {
  /** Places of one row of the lattice are equally far. */
  private static final double SAME_M = 1e-6;

  private TieredMix() {}

  /**
   * The kind of each place, by its number in {@code weights}.
   *
   * @param polewardM how far each place lies towards the pole, from anywhere
   * @param weights as for {@link EvenMix#of}
   * @param tiers kinds by height, those that belong nearest the pole first
   */
  public static List<Integer> of(
      List<Double> polewardM, List<Double> weights, List<List<Integer>> tiers) {
    List<Integer> even = EvenMix.of(polewardM.size(), weights);
    if (tiers.size() < 2) {
      return even;
    }
    List<Integer> fromPole =
        IntStream.range(0, polewardM.size())
            .boxed()
            .sorted(
                Comparator.<Integer>comparingLong(i -> -Math.round(polewardM.get(i) / SAME_M))
                    .thenComparing(i -> i))
            .toList();
    Integer[] dealt = new Integer[polewardM.size()];
    int next = 0;
    for (List<Integer> tier : tiers) {
      List<Double> counts =
          tier.stream().map(k -> (double) Collections.frequency(even, k)).toList();
      int all = (int) counts.stream().mapToDouble(c -> c).sum();
      if (all > 0) {
        // In the order of the lattice again, so that neighbours are mixed.
        List<Integer> places = fromPole.subList(next, next + all).stream().sorted().toList();
        List<Integer> kinds = EvenMix.of(all, counts);
        for (int i = 0; i < all; i++) {
          dealt[places.get(i)] = tier.get(kinds.get(i));
        }
      }
      next += all;
    }
    return new ArrayList<>(Arrays.asList(dealt));
  }
}
