package yardloom.planting.suggest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The best set of a given size, by exact search: branch and bound over all sets, in the order of
 * the kinds. Better is first more months of harvest, then more uses, then more layers; of equal
 * sets the first in the order of the kinds. The search ends early only when nothing can be better,
 * or after {@link #MOST_STEPS} steps, which {@link Found#exact} tells.
 *
 * <p>The bound of a branch is what its kinds and all that may still come would bring together. A
 * library's solver of integer programs finds sets of the same worth, which the tests hold against
 * this search; but it names whichever of the equal sets its threads meet first, so sheets would
 * differ from run to run.
 *
 * <p>References: branch and bound, A. H. Land and A. G. Doig, An Automatic Method of Solving
 * Discrete Programming Problems, Econometrica 28, 1960 (from memory).
 */
final class BestSet {
  /** A step is one kind tried in one place of the set. */
  static final int MOST_STEPS = 5_000_000;

  private static final int MONTH = 10_000;
  private static final int USE = 100;

  private final List<Kind> kinds;
  private final int size;
  private final int perennials;
  private final int[] monthsAfter;
  private final int[] usesAfter;
  private final int[] layersAfter;
  private int steps;
  private int best = -1;
  private List<Kind> bestSet = List.of();

  /** A set, and whether no better one exists. */
  record Found(List<Kind> kinds, boolean exact) {
    Found {
      kinds = List.copyOf(kinds);
    }
  }

  private BestSet(List<Kind> kinds, int size, int perennials) {
    this.kinds = kinds;
    this.size = size;
    this.perennials = perennials;
    int n = kinds.size();
    monthsAfter = new int[n + 1];
    usesAfter = new int[n + 1];
    layersAfter = new int[n + 1];
    for (int i = n - 1; i >= 0; i--) {
      monthsAfter[i] = monthsAfter[i + 1] | kinds.get(i).months();
      usesAfter[i] = usesAfter[i + 1] | kinds.get(i).uses();
      layersAfter[i] = layersAfter[i + 1] | kinds.get(i).layer();
    }
  }

  /**
   * The best set of {@code size} kinds that agree with each other.
   *
   * @param perennials how many of them stay for years, at least
   */
  static Optional<Found> of(List<Kind> kinds, int size, int perennials) {
    BestSet search = new BestSet(List.copyOf(kinds), size, perennials);
    search.extend(new ArrayList<>(), 0, 0, 0, 0);
    return search.best < 0
        ? Optional.empty()
        : Optional.of(new Found(search.bestSet, search.steps < MOST_STEPS));
  }

  /** How good a set is. */
  private static int score(int months, int uses, int layers) {
    return MONTH * Integer.bitCount(months)
        + USE * Integer.bitCount(uses)
        + Integer.bitCount(layers);
  }

  private void extend(List<Kind> chosen, int from, int months, int uses, int layers) {
    if (chosen.size() == size) {
      int score = score(months, uses, layers);
      if (score > best && chosen.stream().filter(Kind::stays).count() >= perennials) {
        best = score;
        bestSet = List.copyOf(chosen);
      }
      return;
    }
    int missing = size - chosen.size();
    for (int i = from; i + missing <= kinds.size() && steps < MOST_STEPS; i++) {
      int bound = score(months | monthsAfter[i], uses | usesAfter[i], layers | layersAfter[i]);
      if (bound <= best) {
        return;
      }
      steps++;
      Kind kind = kinds.get(i);
      if (chosen.stream().allMatch(kind::agreesWith)) {
        chosen.add(kind);
        extend(chosen, i + 1, months | kind.months(), uses | kind.uses(), layers | kind.layer());
        chosen.remove(chosen.size() - 1);
      }
    }
  }
}
