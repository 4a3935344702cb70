package yardloom.planting.stand.formula;

import java.util.Arrays;
import java.util.List;
import yardloom.planting.catalogue.Crop.Coefficients;
import yardloom.planting.catalogue.Plant;

/**
 * Crop coefficients by month: the four-stage curve of FAO-56, averaged over each month of the
 * season.
 *
 * <p>The coefficient is flat in the initial and the middle stage and straight in between and
 * afterwards. The stages take their {@link StageShares} of whatever season the climate gives.
 * Outside the season: 0 for plants that drop their leaves, the initial value for evergreens.
 * Annuals, which are over after some days, have {@link AnnualCurve}.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, chapter 6, equation 66 and figure 34 (from memory).
 */
public final class CropCurve {
  private static final int SAMPLES = 48;

  private CropCurve() {}

  /** January to December, for a season as {@link GrowingSeason} returns it. */
  public static List<Double> monthly(
      Coefficients kc, StageShares shares, Plant.Season kind, List<Integer> season) {
    Double[] months = new Double[12];
    Arrays.fill(months, kind == Plant.Season.EVERGREEN ? kc.initial() : 0.0);
    for (int i = 0; i < season.size(); i++) {
      double sum = 0;
      for (int s = 0; s < SAMPLES; s++) {
        sum += at(kc, shares, (i + (s + 0.5) / SAMPLES) / season.size());
      }
      months[season.get(i)] = sum / SAMPLES;
    }
    return List.of(months);
  }

  /** The coefficient at {@code part} of the season, 0 (its start) to 1. */
  public static double at(Coefficients kc, StageShares shares, double part) {
    if (part <= shares.initialEnd()) {
      return kc.initial();
    }
    if (part < shares.developmentEnd()) {
      double way = (part - shares.initialEnd()) / (shares.developmentEnd() - shares.initialEnd());
      return kc.initial() + way * (kc.middle() - kc.initial());
    }
    if (part <= shares.middleEnd()) {
      return kc.middle();
    }
    double way = (part - shares.middleEnd()) / (1 - shares.middleEnd());
    return kc.middle() + way * (kc.end() - kc.middle());
  }
}
