package yardloom.planting.rotation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * Moves kinds from plot to plot, year by year, so that a family stays away from a plot for two
 * years after it stood there. In each year every kind has one plot.
 *
 * <p>Year by year the arrangement with fewest early returns is taken, of those the first in the
 * order of the plots: all are looked at up to eight plots, of more the turns of the whole round.
 * What cannot be avoided, since a family fills too much ground, stays and is counted.
 *
 * <p>References: [1] L. Woodruff, Rotating vegetables by family, Cornell Cooperative Extension,
 * 2021: usually three years, with two years of unrelated vegetables between related ones.
 */
final class YearsApart {
  /** Years that a family stays away. */
  static final int AWAY = 2;

  private static final int ALL_LOOKED_AT = 8;

  private final List<Set<String>> families;
  private final List<int[]> years = new ArrayList<>();
  private int[] best;
  private int fewest;

  private YearsApart(List<Set<String>> families) {
    this.families = families;
  }

  /**
   * The number of the kind on each plot, for each year; in the first each is where it is.
   *
   * @param families of the kinds, in the order of the plots of the first year; several where crops
   *     follow each other
   */
  static List<int[]> of(List<Set<String>> families, int years) {
    YearsApart search = new YearsApart(List.copyOf(families));
    int[] first = new int[families.size()];
    for (int i = 0; i < first.length; i++) {
      first[i] = i;
    }
    search.years.add(first);
    while (search.years.size() < years) {
      search.years.add(search.next());
    }
    return List.copyOf(search.years);
  }

  private int[] next() {
    int n = families.size();
    best = null;
    fewest = Integer.MAX_VALUE;
    if (n <= ALL_LOOKED_AT) {
      place(new int[n], 0, new boolean[n], 0);
    } else {
      for (int turn = 1; turn < n; turn++) {
        int[] turned = new int[n];
        int early = 0;
        for (int plot = 0; plot < n; plot++) {
          turned[plot] = (last()[plot] + turn) % n;
          early += isEarly(plot, turned[plot]) ? 1 : 0;
        }
        keep(turned, early);
      }
    }
    return best;
  }

  private void place(int[] year, int plot, boolean[] used, int early) {
    if (early >= fewest) {
      return;
    }
    if (plot == year.length) {
      keep(year, early);
      return;
    }
    // The next kind of the round first, so that equal years go on in one direction.
    for (int step = 1; step <= year.length; step++) {
      int kind = (last()[plot] + step) % year.length;
      if (!used[kind]) {
        used[kind] = true;
        year[plot] = kind;
        place(year, plot + 1, used, early + (isEarly(plot, kind) ? 1 : 0));
        used[kind] = false;
      }
    }
  }

  private void keep(int[] year, int early) {
    if (early < fewest) {
      fewest = early;
      best = year.clone();
    }
  }

  private int[] last() {
    return years.get(years.size() - 1);
  }

  private boolean isEarly(int plot, int kind) {
    return isEarly(families, years, years.size(), plot, kind);
  }

  /** Whether the family of a kind stood on the plot in the two years before. */
  static boolean isEarly(
      List<Set<String>> families, List<int[]> years, int year, int plot, int kind) {
    for (int before = Math.max(0, year - AWAY); before < year; before++) {
      if (!Collections.disjoint(families.get(years.get(before)[plot]), families.get(kind))) {
        return true;
      }
    }
    return false;
  }
}
