package yardloom.water.pipe.formula;

/**
 * Darcy friction factors by Reynolds number, for one relative roughness of 0 to 0.05.
 *
 * <p>Laminar to 2000, a cubic to 4000, Swamee and Jain above, to 10⁸ and within 3 percent of
 * Colebrook. The cubic joins both ends in value and slope. Its printed form in the EPANET manual
 * has a sign that differs from the engine; the engine's is used, the manual's is up to 4 percent
 * off.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, chapter 12, and
 * the engine's hydcoeffs.c (cubic of E. J. Dunlop, 1991). [2] P. K. Swamee and A. K. Jain, 1976.
 */
final class FrictionFactor {
  private static final double LAMINAR_END = 2000;
  private static final double TURBULENT_START = 4000;
  private static final double END_TERM = 5.74 / StrictMath.pow(TURBULENT_START, 0.9);
  private static final double LN10 = StrictMath.log(10);

  private final double rough;

  /** Of the cubic in Re / 2000, constant first. */
  private final double x0;

  private final double x1;
  private final double x2;
  private final double x3;

  FrictionFactor(double relativeRoughness) {
    rough = relativeRoughness / 3.7;
    double y2 = rough + END_TERM;
    double y3 = -2 / LN10 * StrictMath.log(y2);
    double fa = 1 / (y3 * y3);
    double slopeTerm = -2 * 0.9 * 2 / LN10 * END_TERM;
    double fb = (2 + slopeTerm / (y2 * y3)) * fa;
    x0 = 7 * fa - fb;
    x1 = 0.128 - 17 * fa + 2.5 * fb;
    x2 = -0.128 + 13 * fa - 2 * fb;
    x3 = 0.032 - 3 * fa + 0.5 * fb;
  }

  /** The factor; Re above 0. */
  double of(double reynolds) {
    if (reynolds <= LAMINAR_END) {
      return 64 / reynolds;
    }
    if (reynolds < TURBULENT_START) {
      double r = reynolds / LAMINAR_END;
      return x0 + r * (x1 + r * (x2 + r * x3));
    }
    double log = StrictMath.log10(rough + turbulent(reynolds));
    return 0.25 / (log * log);
  }

  /** By how much the factor grows with the Reynolds number, in proportion: -1 in laminar flow. */
  double power(double reynolds) {
    if (reynolds <= LAMINAR_END) {
      return -1;
    }
    if (reynolds < TURBULENT_START) {
      double r = reynolds / LAMINAR_END;
      return r * (x1 + r * (2 * x2 + r * 3 * x3)) / of(reynolds);
    }
    double term = turbulent(reynolds);
    return 1.8 * term / ((rough + term) * StrictMath.log(rough + term));
  }

  private static double turbulent(double reynolds) {
    return 5.74 / StrictMath.pow(reynolds, 0.9);
  }
}
