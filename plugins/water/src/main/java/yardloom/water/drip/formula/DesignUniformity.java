package yardloom.water.drip.formula;

/**
 * Emission uniformity of a design: (1 − 1.27 Cv / √n) × least flow / mean flow.
 *
 * <p>Drip line sources on level ground aim at 0.80 to 0.90 (from memory).
 *
 * <p>References: [1] J. Keller and D. Karmeli, Trickle irrigation design parameters, Transactions
 * of the ASAE, 1974; ASAE EP405 (both from memory).
 */
public final class DesignUniformity {
  private DesignUniformity() {}

  /**
   * The uniformity.
   *
   * @param makersCv manufacturer's coefficient of variation of outlets, 0.02 to 0.20
   * @param outletsPerPlant at least 1
   * @param leastOverMean least outlet flow by pressure over mean flow, up to 1
   */
  public static double of(double makersCv, int outletsPerPlant, double leastOverMean) {
    if (makersCv < 0 || outletsPerPlant < 1 || !(leastOverMean >= 0 && leastOverMean <= 1)) {
      throw new IllegalArgumentException(
          "Cv " + makersCv + ", outlets " + outletsPerPlant + ", ratio " + leastOverMean);
    }
    return (1 - 1.27 * makersCv / Math.sqrt(outletsPerPlant)) * leastOverMean;
  }
}
