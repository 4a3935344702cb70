package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import yardloom.kernel.unit.Length;

/**
 * Which kinds are so much taller than others that they belong on the side of the pole: at noon a
 * shadow falls towards it. Tall is what passes 3 ft and twice the other's height.
 *
 * <p>References: common practice, no source.
 */
public final class TallKinds {
  private static final Length TALL = Length.feet(3);
  private static final double TIMES = 2;

  private TallKinds() {}

  /** Whether one is tall beside the other. */
  public static boolean overtops(Length tall, Length low) {
    return tall.compareTo(TALL) >= 0 && tall.compareTo(low.times(TIMES)) >= 0;
  }

  /**
   * Kinds by height, the tallest first, in groups of which none overtops another of its own; by
   * their numbers in {@code heights}, in order within a group.
   */
  public static List<List<Integer>> tiers(List<Length> heights) {
    List<Integer> falling =
        IntStream.range(0, heights.size())
            .boxed()
            .sorted(Comparator.<Integer, Length>comparing(heights::get).reversed())
            .toList();
    List<List<Integer>> tiers = new ArrayList<>();
    Length tallest = Length.ZERO;
    for (int kind : falling) {
      if (tiers.isEmpty() || overtops(tallest, heights.get(kind))) {
        tiers.add(new ArrayList<>());
        tallest = heights.get(kind);
      }
      tiers.get(tiers.size() - 1).add(kind);
    }
    return tiers.stream().map(t -> t.stream().sorted().toList()).toList();
  }
}
