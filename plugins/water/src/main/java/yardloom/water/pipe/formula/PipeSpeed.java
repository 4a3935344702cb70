package yardloom.water.pipe.formula;

/**
 * Mean speed in a full pipe: flow over section.
 *
 * <p>Common practice keeps garden pipes below 1.5 m/s (5 ft/s), to spare them water hammer (from
 * memory).
 *
 * <p>References: definition.
 */
public final class PipeSpeed {
  /** The usual limit, 5 ft/s; from memory. */
  public static final double LIMIT_MS = 1.524;

  private PipeSpeed() {}

  public static double metresPerSecond(double flowM3s, double diameterM) {
    return flowM3s / (Math.PI / 4 * diameterM * diameterM);
  }

  /** The flow at which a pipe reaches a speed, cubic metres per second. */
  public static double flowM3s(double speedMs, double diameterM) {
    return speedMs * Math.PI / 4 * diameterM * diameterM;
  }
}
