package yardloom.water.pipe.formula;

import java.util.function.Function;

/**
 * The most outlets that a level pipe can have before their flows differ by more than allowed.
 *
 * <p>Flow variation grows with the number of outlets, so a search finds it: by doubling until they
 * differ too much, then by halving in between, all with rough solutions, and at last outlet by
 * outlet with exact ones.
 *
 * <p>References: common practice, flow variation of 10 percent; I. P. Wu, An assessment of
 * hydraulic design of micro-irrigation systems, 1997 (10 to 20 percent give a uniformity of 98 to
 * 95 percent).
 */
public final class LongestRun {
  /** Runs are not sought beyond this many outlets. */
  public static final int LIMIT = 5000;

  private LongestRun() {}

  /**
   * The number of outlets, 1 to {@link #LIMIT}.
   *
   * @param pattern spacing, pipe and outlet; its own number of outlets does not matter
   * @param allowed largest less least flow over the largest, such as 0.10
   */
  public static int outlets(Lateral pattern, double inletHeadM, double allowed) {
    int good = 1;
    int bad = 2;
    while (bad <= LIMIT && variation(pattern, bad, r -> r.about(inletHeadM)) <= allowed) {
      good = bad;
      bad = Math.min(2 * bad, LIMIT + 1);
    }
    while (bad - good > 1) {
      int middle = (good + bad) / 2;
      if (variation(pattern, middle, r -> r.about(inletHeadM)) <= allowed) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    while (good > 1 && variation(pattern, good, r -> r.solve(inletHeadM)) > allowed) {
      good--;
    }
    while (good < LIMIT && variation(pattern, good + 1, r -> r.solve(inletHeadM)) <= allowed) {
      good++;
    }
    return good;
  }

  /**
   * The same, quickly if it is what it was under another head: it is, if so many outlets still do
   * and one more does not.
   *
   * @param before 1 to {@link #LIMIT}
   */
  public static int outletsNear(int before, Lateral pattern, double inletHeadM, double allowed) {
    boolean holds =
        (before == 1 || variation(pattern, before, r -> r.solve(inletHeadM)) <= allowed)
            && (before == LIMIT
                || variation(pattern, before + 1, r -> r.solve(inletHeadM)) > allowed);
    return holds ? before : outlets(pattern, inletHeadM, allowed);
  }

  private static double variation(
      Lateral p, int outlets, Function<Lateral, Lateral.Solution> solve) {
    Lateral run =
        new Lateral(outlets, p.spacingM(), p.diameterM(), p.risePerM(), p.friction(), p.emitter());
    try {
      return solve.apply(run).variation();
    } catch (IllegalArgumentException e) {
      return 1; // the far end stays dry
    }
  }
}
