package yardloom.planting.calc;

import java.util.Arrays;
import java.util.List;
import yardloom.planting.model.Plant;
import yardloom.planting.model.Plant.CropCoefficients;

/**
 * Crop coefficients by month: the four-stage curve of FAO-56, averaged over each month of the
 * season.
 *
 * <p>The coefficient is flat in the initial and the middle stage and straight in between and
 * afterwards. FAO-56 gives stage lengths in days for named crops and regions; here the stages take
 * 15, 25, 40 and 20 percent of whatever season the climate gives, a recalled middle of those
 * tables, so a month may be off by a fifth. Outside the season: 0 for plants that drop their leaves
 * or are replanted, the initial value for evergreens.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, chapter 6, equation 66 and figure 34 (from memory).
 */
public final class CropCurve {
  private static final double INITIAL_END = 0.15;
  private static final double DEVELOPMENT_END = 0.40;
  private static final double MIDDLE_END = 0.80;
  private static final int SAMPLES = 48;

  private CropCurve() {}

  /** January to December, for a season as {@link GrowingSeason} returns it. */
  public static List<Double> monthly(CropCoefficients kc, Plant.Season kind, List<Integer> season) {
    Double[] months = new Double[12];
    Arrays.fill(months, kind == Plant.Season.EVERGREEN ? kc.initial() : 0.0);
    for (int i = 0; i < season.size(); i++) {
      double sum = 0;
      for (int s = 0; s < SAMPLES; s++) {
        sum += at(kc, (i + (s + 0.5) / SAMPLES) / season.size());
      }
      months[season.get(i)] = sum / SAMPLES;
    }
    return List.of(months);
  }

  /** The coefficient at {@code part} of the season, 0 (its start) to 1. */
  public static double at(CropCoefficients kc, double part) {
    if (part <= INITIAL_END) {
      return kc.initial();
    }
    if (part < DEVELOPMENT_END) {
      double way = (part - INITIAL_END) / (DEVELOPMENT_END - INITIAL_END);
      return kc.initial() + way * (kc.middle() - kc.initial());
    }
    if (part <= MIDDLE_END) {
      return kc.middle();
    }
    return kc.middle() + (part - MIDDLE_END) / (1 - MIDDLE_END) * (kc.end() - kc.middle());
  }
}
