package yardloom.water.pipe.formula;

/**
 * The share of full-flow friction that a pipe with evenly spaced equal outlets loses.
 *
 * <p>F = 1/(m+1) + 1/(2n) + √(m−1)/(6n²), the first outlet one spacing from the inlet; within 0.002
 * of the exact sum from two outlets and an exponent of 1.75 on. One outlet loses all: the formula's
 * 1.008 is not used.
 *
 * <p>References: [1] J. E. Christiansen, Irrigation by Sprinkling, 1942 (formula from memory;
 * checked against the exact sum).
 */
public final class Christiansen {
  private Christiansen() {}

  /**
   * The factor.
   *
   * @param exponent of flow in the friction law, 1 to 2
   * @param outlets at least 1
   */
  public static double factor(double exponent, int outlets) {
    if (outlets < 1 || !(exponent >= 1 && exponent <= 2)) {
      throw new IllegalArgumentException("exponent " + exponent + ", outlets " + outlets);
    }
    if (outlets == 1) {
      return 1;
    }
    double n = outlets;
    return 1 / (exponent + 1) + 1 / (2 * n) + Math.sqrt(exponent - 1) / (6 * n * n);
  }

  /** The sum that the factor approximates. */
  public static double exact(double exponent, int outlets) {
    double sum = 0;
    for (int i = 1; i <= outlets; i++) {
      sum += StrictMath.pow(i, exponent);
    }
    return sum / StrictMath.pow(outlets, exponent + 1);
  }
}
