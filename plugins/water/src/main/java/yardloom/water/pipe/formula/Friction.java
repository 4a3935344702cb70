package yardloom.water.pipe.formula;

/**
 * A law of head loss in straight pipe.
 *
 * <p>References: {@link DarcyWeisbach}; tests bring the laws of Hazen and Williams and of Blasius.
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
