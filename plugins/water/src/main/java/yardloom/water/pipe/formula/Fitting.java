package yardloom.water.pipe.formula;

/**
 * Head lost in fittings: K v² / (2 g).
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, Table 3.3.
 */
public enum Fitting {
  SHORT_ELBOW(0.9),
  TEE_RUN(0.6),
  TEE_BRANCH(1.8);

  private final double k;

  Fitting(double k) {
    this.k = k;
  }

  public double k() {
    return k;
  }

  /** Metres of head lost at a speed, for the sum of the fittings' coefficients. */
  static double lossM(double k, double speedMs, double gravityMs2) {
    return k * speedMs * speedMs / (2 * gravityMs2);
  }
}
