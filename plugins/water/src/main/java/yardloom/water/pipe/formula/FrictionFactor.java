package yardloom.water.pipe.formula;

/**
 * Darcy friction factors by Reynolds number and relative roughness.
 *
 * <p>{@link #of} is laminar to 2000, a cubic to 4000, Swamee and Jain above. The cubic joins both
 * ends in value and slope. Its printed form in the EPANET manual has a sign that differs from the
 * engine; the engine's is used, the manual's is up to 4 percent off.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, chapter 12, and
 * the engine's hydcoeffs.c (cubic of E. J. Dunlop, 1991). [2] P. K. Swamee and A. K. Jain, 1976.
 * [3] H. Blasius, 1913. [4] C. F. Colebrook, 1939.
 */
public final class FrictionFactor {
  private static final double LAMINAR_END = 2000;
  private static final double TURBULENT_START = 4000;

  private FrictionFactor() {}

  /** The factor over all regimes; Re above 0. */
  public static double of(double reynolds, double relativeRoughness) {
    if (reynolds <= LAMINAR_END) {
      return laminar(reynolds);
    }
    return reynolds < TURBULENT_START
        ? transition(reynolds, relativeRoughness)
        : swameeJain(reynolds, relativeRoughness);
  }

  public static double laminar(double reynolds) {
    return 64 / reynolds;
  }

  /** Smooth pipe, Re about 3000 to 100,000. */
  public static double blasius(double reynolds) {
    return 0.3164 * StrictMath.pow(reynolds, -0.25);
  }

  /** Re 4000 to 10⁸, relative roughness to 0.05; within 3 percent of Colebrook. */
  public static double swameeJain(double reynolds, double relativeRoughness) {
    double log = StrictMath.log10(relativeRoughness / 3.7 + 5.74 / StrictMath.pow(reynolds, 0.9));
    return 0.25 / (log * log);
  }

  /** The implicit law, solved to double precision. */
  public static double colebrook(double reynolds, double relativeRoughness) {
    double x = 1 / Math.sqrt(swameeJain(reynolds, relativeRoughness));
    for (int i = 0; i < 60; i++) {
      double inner = relativeRoughness / 3.7 + 2.51 * x / reynolds;
      double error = x + 2 * StrictMath.log10(inner);
      double slope = 1 + 2 / StrictMath.log(10) * 2.51 / reynolds / inner;
      double next = x - error / slope;
      if (Math.abs(next - x) < 1e-15 * x) {
        break;
      }
      x = next;
    }
    return 1 / (x * x);
  }

  private static double transition(double reynolds, double relativeRoughness) {
    double y2 = relativeRoughness / 3.7 + 5.74 / StrictMath.pow(TURBULENT_START, 0.9);
    double y3 = -2 / StrictMath.log(10) * StrictMath.log(y2);
    double fa = 1 / (y3 * y3);
    double slopeTerm =
        -2 * 0.9 * 2 / StrictMath.log(10) * 5.74 / StrictMath.pow(TURBULENT_START, 0.9);
    double fb = (2 + slopeTerm / (y2 * y3)) * fa;
    double r = reynolds / LAMINAR_END;
    double x1 = 7 * fa - fb;
    double x2 = 0.128 - 17 * fa + 2.5 * fb;
    double x3 = -0.128 + 13 * fa - 2 * fb;
    double x4 = 0.032 - 3 * fa + 0.5 * fb;
    return x1 + r * (x2 + r * (x3 + r * x4));
  }
}
