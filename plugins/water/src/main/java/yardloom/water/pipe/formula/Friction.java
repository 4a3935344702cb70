package yardloom.water.pipe.formula;

/**
 * A law of head loss in straight pipe.
 *
 * <p>References: {@link HazenWilliams}, {@link DarcyWeisbach}, {@link SmoothTube}.
 */
public interface Friction {
  /**
   * Metres of head lost in one metre of pipe.
   *
   * @param flowM3s not negative
   * @param diameterM inside diameter, above 0
   */
  double gradient(double flowM3s, double diameterM);
}
