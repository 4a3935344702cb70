package yardloom.water.tank.formula;

import java.util.List;

/**
 * Where more size begins to bring little: the point of a curve that lies farthest above the straight
 * line between its ends, both axes from 0 to 1.
 *
 * <p>References: [1] V. Satopää, J. Albrecht, D. Irwin, B. Raghavan, Finding a "kneedle" in a
 * haystack, 2011 (from memory).
 */
public final class Knee {
  private Knee() {}

  /**
   * The index of the knee; the first where the curve is flat or has two points or fewer.
   *
   * @param x increasing
   * @param y not decreasing
   */
  public static int of(List<Double> x, List<Double> y) {
    int last = x.size() - 1;
    double width = x.get(last) - x.get(0);
    double height = y.get(last) - y.get(0);
    int best = 0;
    double most = 0;
    for (int i = 0; i <= last && width > 0 && height > 0; i++) {
      double above = (y.get(i) - y.get(0)) / height - (x.get(i) - x.get(0)) / width;
      if (above > most + 1e-12) {
        most = above;
        best = i;
      }
    }
    return best;
  }
}
