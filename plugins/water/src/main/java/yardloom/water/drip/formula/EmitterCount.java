package yardloom.water.drip.formula;

import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * How many single emitters wet a share of the ground under a grown plant: share × area / area that
 * one wets, up to the next whole number where more than a tenth is left over; and the distance at
 * which so many stand along given tubes.
 *
 * <p>Areas are above 0, the share is above 0 and up to 1.
 *
 * <p>References: [1] NRCS Conservation Practice Standard 441, slides of C. Prestwich: wetted share
 * = wetted area / root area (read). [2] Training pages of an equipment maker on emitters for each
 * plant: a tree 15 ft wide, 60 percent, 21 sq ft to an emitter: 5; a shrub of 9 sq ft, 60 percent,
 * 5 sq ft: 1 for 1.08 (read).
 */
public final class EmitterCount {
  private static final double LEFT_OVER = 0.1;
  private static final int HALVINGS = 60;
  private static final double ROUNDING = 1e-6;

  private EmitterCount() {}

  /** The number for one plant, at least 1. */
  public static int of(Area plant, double share, Length wettedWidth) {
    double each = Math.PI / 4 * wettedWidth.metres() * wettedWidth.metres();
    return Math.max(1, (int) Math.ceil(plant.squareMetres() * share / each - LEFT_OVER));
  }

  /**
   * The widest spacing at which tubes have at least so many outlets, the first of each half a
   * spacing from its start.
   */
  public static Length spacing(List<Line> tubes, int count) {
    double totalM = tubes.stream().mapToDouble(t -> t.length().metres()).sum();
    double low = totalM / (count + tubes.size());
    double high = 2 * totalM;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (outlets(tubes, Length.metres(middle)) >= count) {
        low = middle;
      } else {
        high = middle;
      }
    }
    // A ring that is turned to start elsewhere must not lose its last outlet to rounding.
    return Length.metres(low * (1 - ROUNDING));
  }

  private static int outlets(List<Line> tubes, Length spacing) {
    return tubes.stream().mapToInt(t -> DripLayout.outlets(t.length(), spacing)).sum();
  }
}
