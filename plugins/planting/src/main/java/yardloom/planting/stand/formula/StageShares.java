package yardloom.planting.stand.formula;

import yardloom.planting.catalogue.Crop.Stages;

/**
 * Where the stages of a crop end, as parts of its season, 0 to 1.
 *
 * <p>References: [1] Allen, Pereira, Raes, Smith, Crop evapotranspiration, FAO Irrigation and
 * Drainage Paper 56, 1998, Table 11 (lengths of stages).
 *
 * @param initialEnd when the crop begins to close
 * @param developmentEnd when it is full grown
 * @param middleEnd when it begins to ripen or yellow
 */
public record StageShares(double initialEnd, double developmentEnd, double middleEnd) {
  /**
   * For crops without stage lengths: 15, 25, 40 and 20 percent, a recalled middle of FAO-56 Table
   * 11, so that a month may be off by a fifth.
   */
  public static final StageShares RECALLED = new StageShares(0.15, 0.40, 0.80);

  public StageShares {
    if (!(0 <= initialEnd
        && initialEnd <= developmentEnd
        && developmentEnd <= middleEnd
        && middleEnd <= 1)) {
      throw new IllegalArgumentException(
          "stages end at " + initialEnd + ", " + developmentEnd + ", " + middleEnd);
    }
  }

  /** The proportions of stage lengths in days. */
  public static StageShares of(Stages days) {
    double total = days.total();
    int grown = days.initial() + days.development();
    return new StageShares(days.initial() / total, grown / total, (grown + days.middle()) / total);
  }
}
